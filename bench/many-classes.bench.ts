import { loadavg } from 'node:os';
import type { ClassId } from '../core/ids.ts';
import { newClass, newId } from '../test/sharing/far-device.ts';
import { RawDevice } from '../test/sharing/raw-device.ts';
import { type Measurement, summary } from './measure.ts';
import { type MeasuredServer, startServer } from './served.ts';

/** How long each number of classes is held, in seconds; `HELD_FOR=600` for a long run. */
const HELD_FOR = Number(process.env.HELD_FOR ?? 15);

/** What is in each line of the table. */
const HEAD =
  '| classes | events/s | live/s | median ms | p95 ms | of one processor | MB |\n| --- | --- | --- | --- | --- | --- | --- |\n';

/** With how many classes, each more than the last. */
const CLASSES = (process.env.CLASSES ?? '500,1000,2500,5000').split(',').map(Number);

/** A drill of twelve minutes has 83 events, and half of all classes are in one: so many a second and class. */
const EVENTS_A_CLASS = 290 / 5000;

/** Acts that are said live, a second and class. */
const LIVE_A_CLASS = 1250 / 5000;

/** What a class is in this: its desk writes, its wall follows. */
interface Simulated {
  readonly classId: ClassId;
  readonly desk: RawDevice;
  readonly wall: RawDevice;
  count: number;
}

/**
 * Thousands of classes on one server with the embedded database, which is a process of its own on the same
 * computer as all the devices: how long it takes from a mark to the other device, and which share of one
 * processor the server takes. Prints a table of cost against classes, with how busy the computer was.
 */
export async function measurements(): Promise<readonly Measurement[]> {
  const server = await startServer();
  const rows: Measurement[] = [];
  process.stderr.write(
    `${HELD_FOR} seconds each; how busy the computer is besides: ${loadavg()[0]?.toFixed(1)}\n${HEAD}`,
  );
  try {
    const classes: Simulated[] = [];
    for (const count of CLASSES) {
      while (classes.length < count) {
        const missing = Math.min(20, count - classes.length);
        classes.push(...(await Promise.all(Array.from({ length: missing }, () => begin(server)))));
      }
      const held = await hold(server, classes);
      const name = `${count} classes: mark to the other device`;
      const aim = count === CLASSES.at(-1) ? { aim: 150 } : {};
      const row = summary({ name, unit: 'ms', ...aim, values: held.delays });
      rows.push(row);
      process.stderr.write(
        `| ${count} | ${held.delays.length / HELD_FOR} | ${held.live / HELD_FOR} | ${row.median.toFixed(1)} | ${row.p95.toFixed(1)} | ${(held.share * 100).toFixed(0)} % | ${Math.round(server.memory() / 1000)} |\n`,
      );
    }
    for (const { desk, wall } of classes) for (const one of [desk, wall]) one.close();
  } finally {
    await server.stop();
  }
  return rows;
}

async function begin(server: MeasuredServer): Promise<Simulated> {
  const classId = newClass();
  // Each class is a school of its own.
  const desk = await RawDevice.connect(server.port, undefined, newId(), classId);
  const { own } = desk;
  const found = await desk.found(classId);
  const answer = await desk.append(classId, [found], server.pass);
  if (answer.t !== 'kept') throw new Error(JSON.stringify(answer));
  const wall = await RawDevice.connect(server.port, own, own.by, classId);
  wall.follow(classId);
  await wall.next('following');
  desk.follow(classId);
  await desk.next('following');
  return { classId, desk, wall, count: 0 };
}

/** Has all classes at work for a while. */
async function hold(server: MeasuredServer, classes: readonly Simulated[]) {
  const delays: number[] = [];
  const sent = new Map<string, number>();
  const stop = classes.map(({ wall }) =>
    wall.listen((message) => {
      if (message.t !== 'records') return;
      for (const one of message.records) {
        const at = 'id' in one ? sent.get(one.id) : undefined;
        if (at !== undefined) delays.push(performance.now() - at);
      }
    }),
  );
  const before = server.processor();
  const started = performance.now();
  let live = 0;
  let events = 0;
  const passed = () => (performance.now() - started) / 1000;
  while (passed() < HELD_FOR) {
    while (events < passed() * EVENTS_A_CLASS * classes.length) {
      const one = classes[(events++ * 7919) % classes.length] as Simulated;
      const record = await one.desk.record(one.classId, 'run', ++one.count, 'A'.repeat(342));
      sent.set(record.id, performance.now());
      one.desk.send({ t: 'append', k: one.count, c: one.classId, records: [record] });
    }
    for (let more = 0; live < passed() * LIVE_A_CLASS * classes.length && more < 50; more++) {
      const { desk, classId } = classes[(live++ * 6007) % classes.length] as Simulated;
      desk.send({ t: 'live', c: classId, s: 'drill', n: live, body: 'A'.repeat(1000) });
    }
    await new Promise((resolve) => setTimeout(resolve, 1));
  }
  const took = passed();
  const share = (server.processor() - before) / took;
  await new Promise((resolve) => setTimeout(resolve, 2000));
  for (const end of stop) end();
  return { delays, live, share };
}
