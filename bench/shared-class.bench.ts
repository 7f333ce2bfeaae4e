import { classYear } from '../test/class-year.ts';
import { FarDevice, newClass } from '../test/sharing/far-device.ts';
import { RawDevice } from '../test/sharing/raw-device.ts';
import { type Measurement, summary } from './measure.ts';
import { type MeasuredServer, startServer } from './served.ts';

const YEAR = 365 * 24 * 60 * 60 * 1000;
const EVENTS = 60_000;
const FOLLOWERS = 1000;
const STUCK = 20;

/**
 * What a class on several devices takes: a new device that reads 60,000 events, which were sent 200 at a
 * time and packed later; a thousand devices that follow; twenty that take nothing of a class of 30 MB. The
 * server is a process of its own on the same computer.
 */
export async function measurements(): Promise<readonly Measurement[]> {
  const read = await withServer((server) => newDevices(server, 3));
  const followers = await withServer((server) => followersOf(server, FOLLOWERS, 0));
  const stuck = await withServer((server) => followersOf(server, STUCK, 30));
  const name = 'a new device of 60,000 events';
  const processor = read.map((one) => one.processor);
  return [
    summary({ name, unit: 'ms', aim: 3000, values: read.map(({ ms }) => ms) }),
    summary({ name: `${name}: processor, both`, unit: 'ms', aim: 3000, values: processor }),
    summary({ name: `${name}: sent`, unit: 'KB', aim: 3000, values: read.map(({ kb }) => kb) }),
    summary({ name: '1,000 followers', unit: 'KB', aim: 25_000, values: [followers] }),
    summary({ name: '20 that take nothing of 30 MB', unit: 'KB', aim: 200_000, values: [stuck] }),
  ];
}

/** A server of its own for each, since memory that was taken is not given back. */
async function withServer<Value>(work: (server: MeasuredServer) => Promise<Value>): Promise<Value> {
  const server = await startServer();
  try {
    return await work(server);
  } finally {
    await server.stop();
  }
}

interface Reading {
  readonly ms: number;
  /** Processor time of the device and the server together, in milliseconds. */
  readonly processor: number;
  readonly kb: number;
}

/** What it takes from letting a device in until it has all. */
async function newDevices(server: MeasuredServer, count: number): Promise<readonly Reading[]> {
  const classId = newClass();
  const desk = await FarDevice.begin(() => server.port, classId, server.pass);
  const events = classYear(classId, EVENTS).map((one) => ({ ...one, at: one.at - YEAR }));
  for (let from = 0; from < EVENTS; from += 200) {
    await desk.record(events.slice(from, from + 200));
    await desk.far.settled();
  }
  await desk.pack();
  const read: Reading[] = [];
  for (let n = 0; n < count; n++) {
    const [started, own, theirs] = [performance.now(), process.cpuUsage(), server.processor()];
    const laptop = await desk.letIn('teacher');
    const ms = performance.now() - started;
    const { user, system } = process.cpuUsage(own);
    const processor = (user + system) / 1000 + (server.processor() - theirs) * 1000;
    read.push({ ms, processor, kb: laptop.heard / 1000 });
    await laptop.until(EVENTS);
    laptop.close();
  }
  desk.close();
  return read;
}

/** By how many KB the server grows with so many followers, which take nothing of so many MB that come then. */
async function followersOf(
  server: MeasuredServer,
  count: number,
  megabytes: number,
): Promise<number> {
  const desk = await FarDevice.begin(() => server.port, newClass(), server.pass);
  const { own, classId } = desk;
  // What a server that has just begun takes for its first visitors does not count.
  for (let n = 0; n < 300; n++) (await RawDevice.connect(server.port, own)).close();
  await new Promise((resolve) => setTimeout(resolve, 2000));
  const before = server.memory();
  const raws: RawDevice[] = [];
  while (raws.length < count) {
    const raw = await RawDevice.connect(server.port, own);
    raw.follow(classId);
    await raw.until(() => raw.records.length > 0);
    raw.stop();
    raws.push(raw);
  }
  if (megabytes > 0) await fill(server, desk, megabytes);
  await new Promise((resolve) => setTimeout(resolve, 3000));
  const grown = server.memory() - before;
  for (const raw of raws) raw.close();
  desk.close();
  return grown;
}

/** Brings so many MB into a class. */
async function fill(
  server: MeasuredServer,
  { own, classId }: FarDevice,
  megabytes: number,
): Promise<void> {
  const raw = await RawDevice.connect(server.port, own);
  for (let n = 0; n < megabytes * 16; n++) {
    const record = await raw.record(classId, 'run', n + 1, 'A'.repeat(62_500));
    while ((await raw.append(classId, [record])).t === 'later')
      await new Promise((resolve) => setTimeout(resolve, 200));
  }
  raw.close();
}
