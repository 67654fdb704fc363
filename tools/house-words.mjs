import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { dirname, join, parse } from 'node:path';
import { filesUnder, inRoot, root } from './repository.mjs';

/** Clocks and chance: in the packages both are arguments. */
const IMPURE = [
  /\bDate\.now\b/,
  /\bnew Date\b(?:\(\s*\)|(?!\s*\())/,
  /\bMath\.random\b/,
  /\bperformance\.now\b/,
  /\bcrypto\.(?:randomUUID|getRandomValues)\b/,
];
const withoutComments = (text) =>
  text.replace(/\/\*[\s\S]*?\*\/|(?<!:)\/\/[^\n]*/g, (found) => found.replace(/[^\n]/g, ' '));

/** What source reads a clock or throws dice, as `line: what`; comments may name them. */
export function impureLines(source) {
  return withoutComments(source)
    .split('\n')
    .flatMap((line, at) => {
      const found = IMPURE.map((pattern) => pattern.exec(line)).find((match) => match !== null);
      return found === undefined ? [] : [`${at + 1}: ${found[0]}`];
    });
}

/** What in the sources of the packages reads a clock or throws dice. Tests and benches may. */
export const purityComplaints = () =>
  filesUnder(inRoot('packages'), { enter: (name) => name !== 'node_modules' && name !== 'dist' })
    .filter(
      (path) => /^packages\/[^/]+\/src\/.*\.tsx?$/.test(path) && !/\.(test|bench|spec)\.tsx?$/.test(path),
    )
    .flatMap((path) => impureLines(readFileSync(inRoot(path), 'utf8')).map((found) => `${path}:${found}`));

/** Where this checkout lies and what lies beside it: no committed file may name these. */
function placesOfThisMachine() {
  const parent = dirname(root);
  const beside = parent === parse(root).root ? [] : readdirSync(parent).map((name) => join(parent, name));
  return [root, homedir(), ...beside]
    .filter((path) => path.length > 4)
    .map((path) => path.replaceAll('\\', '/'));
}

const escaped = (text) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** What no committed file may hold, each with what it is. The patterns don't match themselves. */
export function bannedPatterns(places) {
  const named = places.map((place) => `${escaped(place)}(?![\\w-])`).join('|');
  return [
    ['a path of a machine', new RegExp(`(?<![\\w.])(?:${named || '(?!)'})`)],
    ['a path of a machine', /(?<![\w.:])\/(?:home|Users)\/[\w.-]+\/|\b[A-Z]:\\Users\\/],
    ['work left undone', /\b(?:TO[D]O|FIX[M]E)\b/],
    ['a silenced type check', /@ts-(?:ignor[e]|nocheck)|\bas an[y]\b/],
    ['a skipped test', /\b(?:test|it|describe)\.(?:skip|only|todo|fixme)\(/],
  ];
}

/** What a text holds that it should not, as `line: what it is`. */
export const bannedLines = (text, patterns) =>
  text.split('\n').flatMap((line, at) => {
    const found = patterns.find(([, pattern]) => pattern.test(line));
    return found === undefined ? [] : [`${at + 1}: ${found[0]}`];
  });

const TEXT =
  /\.(?:[cm]?[jt]sx?|json|jsonl|md|css|html|svg|csv|bib|ya?ml|txt|sh|gpx|vtt|webmanifest)$|(?:^|\/)(?:run|LICENSE|\.[\w]+)$/;

/** What the committed files hold that they should not. */
export function wordComplaints() {
  const patterns = bannedPatterns(placesOfThisMachine());
  const committed = execFileSync('git', ['ls-files', '-z'], {
    cwd: root,
    encoding: 'utf8',
    maxBuffer: 2 ** 26,
  });
  return committed
    .split('\0')
    .filter((path) => TEXT.test(path) && path !== 'package-lock.json' && existsSync(inRoot(path)))
    .flatMap((path) =>
      bannedLines(readFileSync(inRoot(path), 'utf8'), patterns).map((found) => `${path}:${found}`),
    );
}
