import { drillId, eventId, groupId } from '../core/ids.ts';
import type { LogEvent } from '../core/log/event.ts';
import { callNobody } from '../core/warm-up/calling.ts';
import { momentsOf } from '../core/warm-up/moments.ts';
import type { Running } from '../core/warm-up/run-state.ts';
import { placeOf, planFor } from '../core/warm-up/sent.ts';
import { standingAt } from '../core/warm-up/standing.ts';
import { SMALL_DRILL } from '../test/arbitrary-events.ts';
import { FarDevice, newClass, newId } from '../test/sharing/far-device.ts';
import { type Measurement, summary } from './measure.ts';
import { startServer } from './served.ts';

/** What a warm-up of 12 minutes does: 30 words and what comes before, some turned back, most of it noted. */
const ACTS = 120;
const EVENTS = 83;
const MINUTES = 12;

/** A person presses no faster than this, in milliseconds. */
const PRESS_EVERY = 40;

/** Devices say so often that they are there, in milliseconds. */
const HERE_EVERY = 10_000;

/**
 * A warm-up led on one device and shown on another, through the real server on this computer: from the act to
 * the other device, sealing and opening included, drawing not; and the bytes that come to both in a warm-up of
 * 12 minutes. What a battery gives for it cannot be measured here.
 */
export async function measurements(): Promise<readonly Measurement[]> {
  const server = await startServer();
  try {
    const classId = newClass();
    const desk = await FarDevice.begin(() => server.port, classId, server.pass);
    const stage = await desk.letIn('teacher');
    const came = new Map<number, (at: number) => void>();
    stage.hears = {
      onLive(_, value) {
        const [, said] = Array.isArray(value) ? value : [];
        came.get(said?.place?.count)?.(performance.now());
      },
    };
    await desk.far.settled();
    const idle = await heardWithin(desk, stage, HERE_EVERY);
    const before = desk.heard + stage.heard;
    const took: number[] = [];
    for (let act = 0; act < ACTS; act++) {
      const running = led(classId, act);
      const plan = planFor(running, null, 'plan');
      if (act === 0) await desk.far.sayLive(['sweepline.warm-up', { kind: 'plan', plan }]);
      const arrived = new Promise<number>((resolve) => came.set(running.count, resolve));
      const started = performance.now();
      const place = placeOf(running, plan);
      void desk.far.sayLive(['sweepline.warm-up', { kind: 'place', place, granted: null }]);
      if (act < EVENTS) await desk.record([shown(classId, desk.own.by, act)]);
      took.push((await arrived) - started);
      await new Promise((resolve) => setTimeout(resolve, PRESS_EVERY));
    }
    await desk.far.settled();
    await stage.until(EVENTS);
    const acts = desk.heard + stage.heard - before;
    const there = idle * ((MINUTES * 60_000) / HERE_EVERY);
    desk.close();
    stage.close();
    const name = 'a warm-up of 12 minutes on two devices';
    return [
      summary({ name: 'act → other device', unit: 'ms', aim: 150, values: took }),
      summary({ name: `${name}: sent`, unit: 'KB', aim: 500, values: [(acts + there) / 1000] }),
    ];
  } finally {
    await server.stop();
  }
}

/** How many signs come to both in so long while nothing is done. */
async function heardWithin(desk: FarDevice, stage: FarDevice, ms: number): Promise<number> {
  const before = desk.heard + stage.heard;
  await new Promise((resolve) => setTimeout(resolve, ms));
  return desk.heard + stage.heard - before;
}

function led(classId: Running['classId'], act: number): Running {
  return {
    ...{ classId, groupId: groupId('whole-class'), drillId: drillId('drill'), drill: SMALL_DRILL },
    ...{ standing: standingAt(momentsOf(SMALL_DRILL).length), blending: 'whole' },
    ...{ calling: callNobody([]), dictated: [], asking: null, rehearsed: null },
    ...{ count: act + 1, by: 'desk' },
  };
}

function shown(classId: Running['classId'], by: string, place: number): LogEvent {
  const body = { drillId: drillId('drill'), part: 'blending' as const, place };
  return { id: eventId(newId()), classId, at: Date.now(), by, kind: 'shown', body };
}
