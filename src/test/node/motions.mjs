// An independent solid kernel looks at motions at many places on their way.
//
//   node motions.mjs FILE.json
//
// FILE: {"looks": n, "motions": [{"mover": solid, "obstacle": solid, "kind": "slide" | "turn", "at": [x, y, z],
//        "direction": [x, y, z], "from", "to", "rest"}]}     solids as for overlap.mjs; mm and degrees.
// Prints: {"motions": [{"free", "met", "deep", "gap"}]}
// "free": the last place at which they share nothing, before the first at which they do; null if they share from the start.
// "met": the first place at which they share volume, after halving between the two; null if they never do.
// "gap": without a "met", the least distance between them at a few places on the way, if it is less than WIDE.
// "deep": the first place looked at where what they share is more than skin: its volume is more than SKIN times its area, so
// it holds a ball of that radius if it is convex; null if there is none.
import { readFileSync } from 'node:fs';
import { kernel, solidOf } from './solids.mjs';

const SKIN = 0.1;
const VOLUME = 1e-8;
const HALVINGS = 12;
const GAPS = 4;
const WIDE = 200;

const { Manifold } = await kernel();
const input = JSON.parse(readFileSync(process.argv[2], 'utf8'));

/** The matrix, column by column, of the motion from rest to a parameter (Rodrigues' formula). */
function matrix({ kind, at, direction, rest }, parameter) {
  const size = Math.hypot(...direction);
  const [x, y, z] = direction.map((d) => d / size);
  const by = parameter - rest;
  if (kind === 'slide') {
    return [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, x * by, y * by, z * by, 1];
  }
  const angle = (by * Math.PI) / 180;
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  const k = 1 - c;
  const u = [c + x * x * k, z * s + x * y * k, -y * s + x * z * k];
  const v = [-z * s + x * y * k, c + y * y * k, x * s + y * z * k];
  const w = [y * s + x * z * k, -x * s + y * z * k, c + z * z * k];
  const o = [0, 1, 2].map((i) => at[i] - u[i] * at[0] - v[i] * at[1] - w[i] * at[2]);
  return [...u, 0, ...v, 0, ...w, 0, ...o, 1];
}

const apart = (a, b) => [0, 1, 2].some((i) => a.min[i] > b.max[i] || b.min[i] > a.max[i]);

const motions = input.motions.map((motion) => {
  const mover = solidOf(motion.mover);
  const obstacle = solidOf(motion.obstacle);
  const box = obstacle.boundingBox();
  const look = (parameter) => {
    const there = mover.transform(matrix(motion, parameter));
    let answer = { volume: 0, area: 1 };
    if (!apart(there.boundingBox(), box)) {
      const shared = Manifold.intersection(there, obstacle);
      answer = { volume: shared.volume(), area: shared.surfaceArea() };
      shared.delete();
    }
    there.delete();
    return answer;
  };
  const answer = { free: null, met: null, deep: null, gap: null };
  for (let i = 0; i <= input.looks && answer.deep === null; i++) {
    const parameter = motion.from + ((motion.to - motion.from) * i) / input.looks;
    const { volume, area } = look(parameter);
    if (volume <= VOLUME) {
      answer.free = answer.met === null ? parameter : answer.free;
    } else {
      answer.met ??= parameter;
      answer.deep = volume > SKIN * area ? parameter : null;
    }
  }
  for (let i = 0; i < HALVINGS && answer.met !== null && answer.free !== null; i++) {
    const middle = (answer.free + answer.met) / 2;
    if (look(middle).volume <= VOLUME) {
      answer.free = middle;
    } else {
      answer.met = middle;
    }
  }
  if (answer.met === null) {
    answer.gap = WIDE;
    for (let i = 0; i <= GAPS; i++) {
      const there = mover.transform(matrix(motion, motion.from + ((motion.to - motion.from) * i) / GAPS));
      answer.gap = Math.min(answer.gap, there.minGap(obstacle, answer.gap));
      there.delete();
    }
    answer.gap = answer.gap < WIDE ? answer.gap : null;
  }
  mover.delete();
  obstacle.delete();
  return answer;
});

process.stdout.write(JSON.stringify({ motions }));
