import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/**
 * Draws the films of this folder and has ffmpeg write them (`node apps/web/e2e/films/make-films.mjs`). The tests need the films alone.
 * Every frame carries its own number as twelve squares, light for one and dark for nought, the highest bit first: six above,
 * six below. Between them a spot runs to and fro. Nobody and nothing was filmed.
 */
const WIDTH = 192;
const HEIGHT = 144;
const SQUARE = 32;
const BITS = 12;
const here = fileURLToPath(new URL('.', import.meta.url));

/** One frame as grey bytes, a byte a pixel. */
function drawnFrame(number) {
  const frame = Buffer.alloc(WIDTH * HEIGHT, 110);
  const fill = (left, top, width, height, grey) => {
    for (let y = top; y < top + height; y++) frame.fill(grey, y * WIDTH + left, y * WIDTH + left + width);
  };
  for (let bit = 0; bit < BITS; bit++) {
    const isOne = ((number >> (BITS - 1 - bit)) & 1) === 1;
    fill((bit % 6) * SQUARE, bit < 6 ? 0 : HEIGHT - SQUARE, SQUARE, SQUARE, isOne ? 235 : 20);
  }
  const way = WIDTH - 24;
  const along = (number * 3) % (2 * way);
  fill(along < way ? along : 2 * way - along, 62, 20, 20, 200);
  return frame;
}

function ffmpeg(args, input) {
  return new Promise((resolve, reject) => {
    const child = spawn('ffmpeg', ['-hide_banner', '-loglevel', 'error', '-y', ...args], {
      stdio: ['pipe', 'inherit', 'inherit'],
    });
    child.on('error', reject);
    child.on('close', (code) => (code === 0 ? resolve() : reject(new Error(`ffmpeg ended with ${code}`))));
    child.stdin.end(input);
  });
}

const frames = (count) => Buffer.concat(Array.from({ length: count }, (_, n) => drawnFrame(n)));
const raw = (perS) => [
  '-f',
  'rawvideo',
  '-pix_fmt',
  'gray',
  '-s',
  `${WIDTH}x${HEIGHT}`,
  '-r',
  String(perS),
  '-i',
  '-',
];
/** Two seconds of silence, a blast of 0.4 s at 2.9 kHz, silence: twice. */
const blasts = (lengthS) => [
  '-f',
  'lavfi',
  '-i',
  `aevalsrc=if(between(mod(t\\,3)\\,2\\,2.4)\\,0.4*sin(2*PI*2900*t)\\,0):s=48000:d=${lengthS}`,
];
const plain = ['-fflags', '+bitexact', '-flags:v', '+bitexact', '-map_metadata', '-1'];
const out = (name) => join(here, name);

const vp8 = (gop) => ['-c:v', 'libvpx', '-b:v', '150k', '-g', String(gop), '-pix_fmt', 'yuv420p'];
const vp9 = (gop) => [
  '-c:v',
  'libvpx-vp9',
  '-b:v',
  '0',
  '-crf',
  '40',
  '-g',
  String(gop),
  '-pix_fmt',
  'yuv420p',
];

// Even frames, 30 a second, with sound.
await ffmpeg(
  [
    ...raw(30),
    ...blasts(6),
    ...vp8(60),
    '-c:a',
    'libopus',
    '-b:a',
    '24k',
    '-cluster_time_limit',
    '1000',
    ...plain,
    out('squares.webm'),
  ],
  frames(180),
);
// Uneven frames, no sound: as phones film in poor light. 17, 50, 33 and 120 ms long in turn.
const startsMs = 'floor(N/4)*220+17*gte(mod(N\\,4)\\,1)+50*gte(mod(N\\,4)\\,2)+33*gte(mod(N\\,4)\\,3)';
await ffmpeg(
  [
    ...raw(30),
    ...['-vf', `settb=1/1000,setpts=${startsMs}`, '-fps_mode', 'passthrough', '-enc_time_base', '1:1000'],
    ...[...vp9(40), '-an', ...plain, out('uneven.webm')],
  ],
  frames(80),
);
// H.264 with frames that are stored out of order, AAC beside it; when it was taken is told, the index comes first.
await ffmpeg(
  [
    ...raw(25),
    ...blasts(4),
    ...['-c:v', 'libx264', '-preset', 'slow', '-bf', '3', '-g', '50', '-crf', '30', '-pix_fmt', 'yuv420p'],
    ...['-c:a', 'aac', '-b:a', '48k', '-fflags', '+bitexact', '-movflags', '+faststart'],
    ...['-metadata', 'creation_time=2026-03-01T09:00:00Z', out('squares.mp4')],
  ],
  frames(100),
);
// A coding that few browsers read.
await ffmpeg(
  [
    ...raw(25),
    ...['-c:v', 'libx265', '-x265-params', 'log-level=none', '-crf', '38', '-pix_fmt', 'yuv420p'],
    ...['-tag:v', 'hvc1', '-an', ...plain, out('hevc.mp4')],
  ],
  frames(25),
);
// Two hours: a frame every twenty seconds.
await ffmpeg([...raw('1/20'), ...vp9(30), '-an', ...plain, out('two-hours.webm')], frames(361));
// Sound without a picture.
await ffmpeg([...blasts(3), '-c:a', 'libopus', '-b:a', '16k', ...plain, out('only-sound.webm')], '');
