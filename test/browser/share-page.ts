import type { Page } from 'playwright-core';
import type { Device, SharedSite } from './shared-site.ts';

/** A code to type, or the letters of a recovery sheet: capitals and digits in groups. */
export const typedCode = (page: Page) => page.getByText(/^[A-Z2-9]{2,4}(-[A-Z2-9]{2,4})+$/);

/** The quiet sign in the header. */
export const whereabouts = (page: Page, said: string | RegExp) =>
  page.getByRole('banner').getByRole('link').filter({ hasText: said });

/** Names the class and a child, and shares it. */
export async function share(site: SharedSite, { page }: Device, child = 'Robin'): Promise<void> {
  await page.goto(`${site.url}#/class`);
  await page.getByLabel('Add children').fill(child);
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: child }).waitFor();
  await page.goto(`${site.url}#/share`);
  await page.getByLabel('School pass').fill(site.pass);
  await page.getByLabel('What to call this device').fill('Laptop');
  await page.getByRole('button', { name: 'Share this class' }).click();
  await page.getByRole('heading', { name: 'Devices and people' }).waitFor();
  await whereabouts(page, 'With your other devices').waitFor();
}

/** Makes a code on a device that is in the class; gives the address behind it. */
export async function makeCode({ page }: Device, role: string, name = ''): Promise<string> {
  await page.getByRole('radio', { name: role }).check();
  if (name !== '') await page.getByLabel('Its name, if you like').fill(name);
  await page.getByRole('button', { name: 'Show the code' }).click();
  return (await page.getByText(/^https?:.+#/).textContent()) ?? '';
}

/** Comes into the class by an address. */
export async function comeIn({ page }: Device, address: string): Promise<void> {
  await page.goto(address);
  await page.getByRole('heading', { name: /^You are in / }).waitFor();
}
