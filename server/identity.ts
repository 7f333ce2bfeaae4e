import { createHash, createHmac, randomBytes, timingSafeEqual } from 'node:crypto';
import type { Kysely } from 'kysely';
import type { Tables } from './database/schema.ts';

/** How a server knows its own challenges again, whichever of its instances made them. */
export interface Identity {
  /** A nonce for a device to sign; any instance knows it again. */
  challenge(now: number): string;
  /** Whether a nonce was made by this server in the last ten minutes. */
  isFresh(nonce: string, now: number): boolean;
}

/** A nonce counts so long, in milliseconds. */
const FRESH_FOR = 10 * 60 * 1000;

/** Reads with what the server signs, which is settled with its first start. */
export async function readIdentity(db: Kysely<Tables>): Promise<Identity> {
  const fresh = { one: 1, secret: randomId() };
  await db
    .insertInto('server')
    .values(fresh)
    .onConflict((conflict) => conflict.doNothing())
    .execute();
  const { secret } = await db.selectFrom('server').selectAll().executeTakeFirstOrThrow();
  const seal = (text: string) => createHmac('sha256', secret).update(text).digest('base64url');
  return {
    challenge(now) {
      const text = `${now}.${randomId()}`;
      return `${text}.${seal(text)}`;
    },
    isFresh(nonce, now) {
      const [at = '', chance = '', sealed = ''] = nonce.split('.');
      const made = Number(at);
      if (!(made <= now && now - made <= FRESH_FOR)) return false;
      const [left, right] = [Buffer.from(sealed), Buffer.from(seal(`${at}.${chance}`))];
      return left.length === right.length && timingSafeEqual(left, right);
    },
  };
}

/** A new pass with which so many classes can be begun: 80 bits in letters that are easily typed. */
export async function makePass(db: Kysely<Tables>, classes: number): Promise<string> {
  const letters = Array.from(randomBytes(16), (byte) => SIGNS[byte % SIGNS.length]).join('');
  const pass = letters.replace(/(.{4})(?=.)/g, '$1-');
  await db
    .insertInto('pass')
    .values({ hash: hashOf(pass), classes_left: classes })
    .execute();
  return pass;
}

/** As what a pass is kept: upper and lower case and hyphens do not matter. */
export function hashOf(pass: string): string {
  const plain = pass.toUpperCase().replace(/[^A-Z0-9]/g, '');
  return createHash('sha256').update(plain).digest('base64url');
}

/** 32 letters and digits, without those that look alike. */
const SIGNS = 'ABCDEFGHJKLMNPQRSTUVWXYZ23456789';

function randomId(): string {
  return randomBytes(16).toString('base64url');
}
