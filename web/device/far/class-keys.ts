import type { ClassId } from '../../../core/ids.ts';
import type { RightsSaid, SealedSecrets } from '../../../core/sharing/rights-said.ts';
import { LANES, type Lane, mayRead, type Role } from '../../../core/sharing/role.ts';
import { keyFrom, makeSecret, openSealed, seal, sealTo, unseal } from './cipher.ts';

/** The secrets of one epoch; those of a lane that this device does not read are missing. */
export type Secrets = Readonly<Partial<Record<Lane, Uint8Array<ArrayBuffer>>>>;

/** Under which secrets a class was sealed, epoch by epoch. */
export interface ClassKeys {
  /** The key of a lane in an epoch; null when this device has it not. */
  keyOf(epoch: number, lane: Lane): Promise<CryptoKey | null>;
  secretsOf(epoch: number): Secrets;
  /** Takes up secrets, and through the chain those of all epochs before. */
  learn(epoch: number, secrets: Secrets): Promise<void>;
  /** Remembers how the epoch before is sealed under a new one. */
  chain(epoch: number, chain: (RightsSaid & { readonly says: 'epoch' })['chain']): Promise<void>;
}

/** No keys yet. */
export function createClassKeys(classId: ClassId): ClassKeys {
  const known = new Map<number, Secrets>();
  const chains = new Map<number, Readonly<Record<Lane, string>>>();
  const keys = new Map<string, Promise<CryptoKey>>();
  const keyOf = async (epoch: number, lane: Lane): Promise<CryptoKey | null> => {
    const secret = known.get(epoch)?.[lane];
    if (!secret) return null;
    const name = `${epoch} ${lane}`;
    const key = keys.get(name) ?? keyFrom(secret, classId, `sweepline/1/${epoch}/${lane}`);
    keys.set(name, key);
    return key;
  };
  const goBack = async (from: number): Promise<void> => {
    for (let epoch = from; chains.has(epoch); epoch--) {
      const before: Partial<Record<Lane, Uint8Array<ArrayBuffer>>> = {
        ...known.get(epoch - 1),
      };
      for (const lane of LANES) {
        const key = await keyOf(epoch, lane);
        const secret =
          key &&
          (await unseal(key, chainHeader(classId, epoch, lane), chains.get(epoch)?.[lane] ?? ''));
        if (secret) before[lane] = secret;
      }
      known.set(epoch - 1, before);
    }
  };
  return {
    keyOf,
    secretsOf: (epoch) => known.get(epoch) ?? {},
    async learn(epoch, secrets) {
      known.set(epoch, { ...known.get(epoch), ...secrets });
      await goBack(epoch);
    },
    async chain(epoch, chain) {
      chains.set(epoch, chain);
      await goBack(epoch);
    },
  };
}

/** New secrets for an epoch. */
export function makeSecrets(): Required<Secrets> {
  return { run: makeSecret(), private: makeSecret() };
}

/** Secrets sealed to a device or an invitation, as far as its role reads: to a wall, none. */
export async function sealSecrets(
  publicKey: string,
  role: Role,
  classId: ClassId,
  epoch: number,
  secrets: Secrets,
): Promise<SealedSecrets> {
  const sealed: Record<Lane, string | null> = { run: null, private: null };
  for (const lane of LANES) {
    const secret = mayRead(role, lane) ? secrets[lane] : undefined;
    if (secret) sealed[lane] = await sealTo(publicKey, purposeOf(classId, epoch, lane), secret);
  }
  if (sealed.run === null && mayRead(role, 'run'))
    throw new Error('Without the secret to run by there is nothing to share.');
  return sealed;
}

/** The secrets that were sealed to this pair of keys; nothing of those that were not. */
export async function openSecrets(
  pair: CryptoKeyPair,
  classId: ClassId,
  epoch: number,
  sealed: SealedSecrets,
): Promise<Secrets> {
  const secrets: Partial<Record<Lane, Uint8Array<ArrayBuffer>>> = {};
  for (const lane of LANES) {
    const text = sealed[lane];
    const secret = text && (await openSealed(pair, purposeOf(classId, epoch, lane), text));
    if (secret) secrets[lane] = secret;
  }
  return secrets;
}

/** The secrets of an epoch, sealed under those of the next. */
export async function makeChain(
  classId: ClassId,
  epoch: number,
  next: Required<Secrets>,
  before: Secrets,
): Promise<{ readonly run: string; readonly private: string }> {
  const chain = { run: '', private: '' };
  for (const lane of LANES) {
    const key = await keyFrom(next[lane], classId, `sweepline/1/${epoch}/${lane}`);
    const secret = before[lane];
    if (!secret) throw new Error('Only an owner, who reads all, begins an epoch.');
    chain[lane] = await seal(key, chainHeader(classId, epoch, lane), secret);
  }
  return chain;
}

function purposeOf(classId: ClassId, epoch: number, lane: Lane): string {
  return `sweepline/1 secret ${classId} ${epoch} ${lane}`;
}

function chainHeader(classId: ClassId, epoch: number, lane: Lane): string {
  return `sweepline/1 chain ${classId} ${epoch} ${lane}`;
}
