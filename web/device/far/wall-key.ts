import { drillId as asDrillId, type ClassId, type DrillId } from '../../../core/ids.ts';
import { fromText, toText, utf8 } from './bytes.ts';
import { bytesFrom, keyFrom, openSealed, seal, sealTo, unseal } from './cipher.ts';

/** The key of one warm-up, all that a wall has. */
export interface WallKey {
  readonly drillId: DrillId;
  readonly key: CryptoKey;
}

/** What the key of one warm-up is made from: HKDF of the epoch's secret to run by. It opens nothing else. */
export function wallSecret(
  run: Uint8Array<ArrayBuffer>,
  classId: ClassId,
  drillId: DrillId,
): Promise<Uint8Array<ArrayBuffer>> {
  return bytesFrom(run, `sweepline/1/wall/${classId}/${drillId}`, 32);
}

/** The key itself, the same on the device that leads and on the wall. */
export async function wallKeyFrom(
  secret: Uint8Array<ArrayBuffer>,
  classId: ClassId,
  drillId: DrillId,
): Promise<WallKey> {
  return { drillId, key: await keyFrom(secret, classId, 'sweepline/1/wall live') };
}

/** The secret of a warm-up, sealed to one wall. */
export function giveWallKey(
  wall: { readonly id: string; readonly box: string },
  classId: ClassId,
  drillId: DrillId,
  secret: Uint8Array<ArrayBuffer>,
): Promise<string> {
  const text = JSON.stringify([drillId, toText(secret)]);
  return sealTo(wall.box, purposeOf(classId, wall.id), utf8(text));
}

/** The key that was given to this wall; null when it was not. */
export async function takeWallKey(
  pair: CryptoKeyPair,
  classId: ClassId,
  wall: string,
  body: string,
): Promise<WallKey | null> {
  const bytes = await openSealed(pair, purposeOf(classId, wall), body);
  if (bytes === null) return null;
  const [drill, secret] = JSON.parse(new TextDecoder().decode(bytes)) as readonly [string, string];
  return wallKeyFrom(fromText(secret), classId, asDrillId(drill));
}

/** A piece of what is said between a warm-up and its walls, sealed. */
export function sealForWall(
  { key, drillId }: WallKey,
  classId: ClassId,
  bytes: Uint8Array<ArrayBuffer>,
): Promise<string> {
  return seal(key, headerOf(classId, drillId), bytes);
}

/** What was sealed so; null when it was sealed with another key. */
export function unsealForWall(
  { key, drillId }: WallKey,
  classId: ClassId,
  body: string,
): Promise<Uint8Array<ArrayBuffer> | null> {
  return unseal(key, headerOf(classId, drillId), body);
}

function purposeOf(classId: ClassId, wall: string): string {
  return `sweepline/1 wall ${classId} ${wall}`;
}

function headerOf(classId: ClassId, drillId: DrillId): string {
  return `sweepline/1 wall live ${classId} ${drillId}`;
}
