import { HERE } from './in-step.ts';
import { linkTo } from './route.ts';

/** The address that lets a device in, as a camera reads it; what stands after # never reaches a server. */
export function linkFor(secret: string): string {
  return `${HERE}${linkTo('join', secret)}`;
}

/** The address by which a device that is in a class lets in the one that shows it. */
export function admittingLink(secret: string): string {
  return `${HERE}${linkTo('share', secret)}`;
}
