// From the top of the page to the clock and back without a pointer; the focus is always seen.
import assert from "node:assert/strict";
import { files, intervals, openAtNoon, shown, text, withBrowser } from "./browser.mjs";

await withBrowser(async (browser) => {
  const { page, done } = await openAtNoon(browser, files[0]);
  const all = await intervals(page);
  const press = (key) => page.keyboard.press(key);
  const focus = () => page.evaluate(() => document.activeElement.id);

  async function seen(where) {
    const outline = await page.evaluate(() => {
      const style = getComputedStyle(document.activeElement);
      return style.outlineStyle === "none" ? 0 : parseFloat(style.outlineWidth);
    });
    assert.ok(outline >= 2, where + ": the focus is seen");
  }

  await press("Tab");
  assert.equal(await focus(), "open-clock");
  await seen("the page");
  await press("Enter");
  assert.equal(await focus(), "start");
  await press("Space");
  assert.equal(await text(page, "#start"), "Pause");
  await press("ArrowRight");
  assert.equal((await shown(page)).kind, all[1].word);
  await press("ArrowLeft");
  assert.equal((await shown(page)).kind, all[0].word);
  await press("Space");
  assert.equal(await text(page, "#start"), "Start");

  // Round once: everything can be reached, nothing outside, and the focus is seen.
  const reached = new Set();
  await page.locator(".settings summary").focus();
  await press("Enter");
  for (let i = 0; i < 14; i++) {
    await press("Tab");
    if (await page.evaluate(() => document.activeElement.closest("#clock") !== null)) {
      reached.add((await focus()) || "other");
      await seen(await focus());
    }
    assert.ok(await page.evaluate(() => document.activeElement.closest("#page") === null));
  }
  for (const id of ["sound", "close-clock", "back", "start", "forward"]) {
    assert.ok(reached.has(id), id + " can be reached");
  }
  // The space key ticks a box instead of starting the clock.
  await page.locator("#sound").focus();
  await press("Space");
  assert.ok(await page.isChecked("#sound"));
  assert.equal(await text(page, "#start"), "Start");
  await press("Escape");
  assert.ok(await page.isHidden("#sound"), "Escape closes the settings first");
  await press("Escape");
  assert.equal(await focus(), "open-clock");
  assert.ok(await page.isHidden("#clock"));
  // After a click the space key is free to start and pause.
  await press("Enter");
  await page.click("#forward");
  await press("Space");
  assert.equal(await text(page, "#start"), "Pause");
  await done();
});
