// A session of half a minute for real. A busy machine may draw late, but lateness must not add up.
import assert from "node:assert/strict";
import { files, intervals, open, withBrowser } from "./browser.mjs";

const LATEST = 100;
const PATIENCE = 10000;

await withBrowser(async (browser) => {
  const { page, done } = await open(browser, files[0]);
  const all = await intervals(page);
  await page.evaluate(() => {
    window.changes = [];
    let begun = 0;
    document.getElementById("start").addEventListener("click", () => {
      begun = begun || performance.now();
    });
    new MutationObserver(() => {
      const passed = performance.now() - begun;
      window.changes.push({ passed, seconds: document.getElementById("seconds").textContent });
    }).observe(document.getElementById("seconds"), { childList: true });
  });
  await page.click("#open-clock");
  const whole = all[all.length - 1].end;
  await page.click("#start");
  await page.waitForFunction(
    () => document.getElementById("clock").dataset.kind === "end",
    undefined,
    { timeout: whole * 1000 + PATIENCE },
  );
  const changes = await page.evaluate(() => window.changes);
  // Every second of every interval is shown once; the first is there from the beginning, or drawn
  // late by a busy machine.
  const wanted = all.flatMap((it) =>
    Array.from({ length: it.end - it.start }, (_, i) => String(it.end - it.start - i)),
  );
  const counted = changes.slice(changes.findIndex((it) => it.seconds !== wanted[0]));
  const seen = counted.map((it) => it.seconds);
  assert.deepEqual(seen, [...wanted.slice(1), "0"]);
  const late = counted.map((it, i) => it.passed - (i + 1) * 1000);
  assert.ok(Math.min(...late) > -20, "never early: " + Math.min(...late));
  const half = late.slice(late.length / 2).sort((a, b) => a - b);
  assert.ok(half[Math.floor(half.length / 2)] < LATEST, "late in the second half: " + half);
  console.log("late by", Math.min(...late).toFixed(1), "to", Math.max(...late).toFixed(1), "ms");
  await done();
});
