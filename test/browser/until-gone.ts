import { existsSync, readdirSync, readFileSync } from 'node:fs';

/**
 * Waits until the last process of a group is gone, ten seconds at most; `group` is the id of the process that
 * leads it. The one of a browser that writes its databases outlives the first of its processes. One that is
 * dead and not yet buried writes nothing, and counts as gone where the system tells (proc(5)).
 */
export async function untilGone(group: number): Promise<void> {
  for (let waited = 0; isThere(group) && waited < 10_000; waited += 10) {
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
}

function isThere(group: number): boolean {
  try {
    process.kill(-group, 0);
  } catch {
    return false;
  }
  return !existsSync('/proc/self/stat') || readdirSync('/proc').some((pid) => livesIn(group, pid));
}

function livesIn(group: number, pid: string): boolean {
  try {
    const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
    const [state, , ofGroup] = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
    return Number(ofGroup) === group && state !== 'Z';
  } catch {
    return false;
  }
}
