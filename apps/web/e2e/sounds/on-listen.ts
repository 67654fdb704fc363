import { utimesSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Page } from '@playwright/test';
import { expect } from '../served-app.ts';
import { said } from '../steps.ts';
import { fieldJournal, LENGTH_S, type MoreFact, STARTS_AT } from './made-field.ts';

export const sounds = (name: string): string => fileURLToPath(new URL(name, import.meta.url));

/** Puts the made session on record, by the way a handler brings an export back. */
export async function bringFieldSession(page: Page, more: readonly MoreFact[] = []): Promise<void> {
  await page.goto('/');
  // The first open is shown when the record has been read.
  await expect(page.getByLabel(said.dogs.first.name)).toBeVisible();
  await page.getByRole('link', { name: said.shell.places.setup }).click();
  const buffer = Buffer.from(fieldJournal(more));
  await page
    .locator('input[type="file"]')
    .setInputFiles({ name: 'field.jsonl', mimeType: 'application/jsonl', buffer });
  await expect(page.getByText(said.keeping.bringBackHint)).toHaveCount(0);
}

/** Opens Listen of the made session. */
export async function openListen(page: Page): Promise<void> {
  await page.goto('/back/s');
  await page.getByRole('link', { name: said.back.listen }).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(said.listenScreen.title('Whimbrel'));
}

/** Writes a file that was last written when the made session's sound ended, as a recorder does. */
export function writeRecorded(path: string, bytes: Uint8Array): string {
  writeFileSync(path, bytes);
  const ended = new Date(Date.parse(STARTS_AT) + 1000 * LENGTH_S);
  utimesSync(path, ended, ended);
  return path;
}

export const chooser = (page: Page) => page.locator('.listen-file input');
export const keepKey = (page: Page) => page.locator('.listen-foot .button-main');
