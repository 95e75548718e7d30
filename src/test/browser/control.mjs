// Start, pause, back, forward, tracks, and time that passes while the page cannot run.
import assert from "node:assert/strict";
import { NOON, files, intervals, openAtNoon, shown, text, withBrowser } from "./browser.mjs";

await withBrowser(async (browser) => {
  const { page, done } = await openAtNoon(browser, files[0]);
  const all = await intervals(page);
  const seconds = async (want, why) => assert.equal((await shown(page)).seconds, want, why);
  await page.click("#open-clock");
  await page.clock.runFor(60000);
  await seconds(String(all[0].end), "it waits until it is started");

  await page.click("#start");
  await page.clock.runFor(4050);
  await seconds(String(all[0].end - 4), "it runs");
  assert.equal(await text(page, "#start"), "Pause");
  await page.click("#start");
  await page.clock.runFor(90000);
  await seconds(String(all[0].end - 4), "a pause holds it");
  assert.equal(await text(page, "#state"), "paused");
  await page.click("#start");
  await page.clock.runFor(2000);
  await seconds(String(all[0].end - 6), "it goes on where it was");

  // Forward through everything and back through everything, by the data alone.
  for (let i = 1; i < all.length; i++) {
    await page.click("#forward");
    const now = await shown(page);
    assert.equal(now.kind, all[i].word);
    assert.equal(now.name, all[i].now ? title(all[i].now) : "");
    assert.equal(now.seconds, String(all[i].end - all[i].start));
  }
  for (let i = all.length - 2; i >= 0; i--) {
    await page.click("#back");
    const now = await shown(page);
    assert.equal(now.kind + now.place, all[i].word + all[i].place);
    // What comes next names each exercise once, both sides together, with its modifications.
    const coming = await page.locator("#next > li").allInnerTexts();
    assert.equal(coming.length, new Set(all[i].next.map((it) => it.id)).size);
    for (const move of all[i].next) {
      const line = coming.find((it) => it.includes(move.name));
      assert.ok(line && line.includes(move.side), `${all[i].start} s: ${title(move)} comes next`);
      for (const other of move.instead) {
        assert.ok(line.includes(other.name), `${move.name}: ${other.name} beside it`);
      }
    }
  }
  await page.click("#forward");
  await page.clock.runFor(7000);
  await page.click("#back");
  await seconds(String(all[1].end - all[1].start), "back leads to the beginning first");

  // A modification is shown for the chosen tracks only.
  const modified = all.findIndex((it) => it.now && it.now.instead.length > 1);
  assert.ok(modified > 0, "the class has modifications");
  for (let i = 1; i < modified; i++) {
    await page.click("#forward");
  }
  const names = all[modified].now.instead.map(title);
  const list = async () => (await page.locator(".now .modification").allInnerTexts()).join("\n");
  for (const name of names) {
    assert.ok((await list()).includes(name));
  }
  await page.click(".settings summary");
  for (const box of await page.locator("#tracks input").all()) {
    await box.uncheck();
  }
  assert.equal(await list(), "");
  await page.locator("#tracks input").nth(all[modified].now.instead[0].track).check();
  assert.ok((await list()).includes(names[0]));
  await page.keyboard.press("Escape");

  // While a device sleeps, the steady clock of the page may stand still; the wall clock goes on.
  await page.click("#close-clock");
  await page.reload();
  await page.clock.pauseAt(new Date(NOON.getTime() + 3600 * 1000));
  await page.click("#open-clock");
  await page.click("#start");
  await page.clock.setSystemTime(new Date(NOON.getTime() + 3600 * 1000 + 30000));
  await page.evaluate(() => document.dispatchEvent(new Event("visibilitychange")));
  assert.equal((await shown(page)).passed, "0:30");
  // A tab of which no timer runs for minutes.
  await page.clock.fastForward(200000);
  assert.equal((await shown(page)).passed, "3:50");
  await page.click("#close-clock");
  await page.clock.runFor(60000);
  await page.click("#open-clock");
  assert.equal((await shown(page)).passed, "3:50", "leaving pauses");
  await done();
});

function title(move) {
  return move.name + (move.side ? ", " + move.side : "");
}
