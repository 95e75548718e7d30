// The whole session under a clock that moves in uneven steps: at every moment the page shows what
// the data say, or what they said at most 100 ms before.
import assert from "node:assert/strict";
import { expected, files, intervals, openAtNoon, shown, withBrowser } from "./browser.mjs";

const LATEST = 100;
const SEED = 20260101;

function random(seed) {
  let state = seed;
  return () => {
    state = (state * 1103515245 + 12345) % 2147483648;
    return state / 2147483648;
  };
}

await withBrowser(async (browser) => {
  const { page, done } = await openAtNoon(browser, files[0]);
  const all = await intervals(page);
  const end = all[all.length - 1].end * 1000;
  const next = random(SEED);
  await page.click("#open-clock");
  await page.click("#start");
  let passed = 0;
  let checked = 0;
  while (passed < end + 2000) {
    const step = Math.round(next() * 2900) + 17;
    if (next() < 0.1) {
      // As a tab in the background or a lid that is shut: timers come once and late.
      await page.clock.fastForward(step * 5);
      passed += step * 5;
    } else {
      await page.clock.runFor(step);
      passed += step;
    }
    const now = await shown(page);
    const good = [expected(all, passed), expected(all, Math.max(0, passed - LATEST))];
    assert.ok(
      good.some((it) => it.seconds === now.seconds && it.kind === now.kind),
      `after ${passed} ms, seed ${SEED}: ${JSON.stringify(now)}, not ${JSON.stringify(good)}`,
    );
    checked++;
  }
  assert.ok(checked > 100, "enough moments");
  assert.equal((await shown(page)).kind, "End");
  await done();
});
