// The moving picture of what is on, still ones of what comes next; no movement while paused or for
// those who want less of it; and no gap where there are no pictures.
import assert from "node:assert/strict";
import { files, openAtNoon, withBrowser } from "./browser.mjs";

await withBrowser(async (browser) => {
  for (const reducedMotion of ["no-preference", "reduce"]) {
    const { page, done } = await openAtNoon(browser, files[0], { reducedMotion });
    const paused = () =>
      page.evaluate(() => document.querySelector("#moving svg").animationsPaused());
    await page.click("#open-clock");
    await page.click("#start");
    await page.keyboard.press("ArrowRight");
    assert.equal(await page.locator("#moving svg").count(), 1);
    assert.equal(
      await page.locator("#moving animate").count(),
      reducedMotion === "reduce" ? 0 : 1,
    );
    assert.ok((await page.locator("#next .bar-still").count()) > 0);
    assert.equal(await page.locator("#next animate").count(), 0);
    assert.equal(await paused(), false);
    await page.keyboard.press("Space");
    assert.equal(await paused(), true);
    assert.equal(await page.locator("#page animate").count(), 0, "the sheet is still");
    assert.ok((await page.locator("#page .picture svg").count()) > 10);
    await done();
  }
  const { page, done } = await openAtNoon(browser, files[1]);
  await page.click("#open-clock");
  assert.equal(await page.locator(".picture, .now-picture:visible, #next svg").count(), 0);
  await done();
});
