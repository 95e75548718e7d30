// No page is wider than the window, and the clock keeps its seconds and its keys in sight.
import assert from "node:assert/strict";
import { files, intervals, openAtNoon, withBrowser } from "./browser.mjs";

const SIZES = [
  [360, 740],
  [740, 360],
  [768, 1024],
  [1920, 1080],
];

await withBrowser(async (browser) => {
  for (const [width, height] of SIZES) {
    const { page, done } = await openAtNoon(browser, files[0], { viewport: { width, height } });
    const fits = async (selector, where) => {
      const [wide, room] = await page.evaluate((it) => {
        const element = document.querySelector(it);
        return [element.scrollWidth, element.clientWidth];
      }, selector);
      assert.ok(wide <= room, `${where} at ${width} px: ${wide} > ${room}`);
    };
    await fits("html", "the page");
    if (await page.locator("#session-data").count()) {
      await clock(page, fits, width, height);
    }
    await done();
  }
});

async function clock(page, fits, width, height) {
  const all = await intervals(page);
  await page.click("#open-clock");
  await page.click("#start");
  for (const interval of all) {
    const where = `the clock (${interval.word} ${interval.start})`;
    await fits("#clock", where);
    for (const id of ["seconds", "back", "start", "forward"]) {
      const box = await page.locator("#" + id).boundingBox();
      assert.ok(
        box && box.x >= 0 && box.y >= 0 && box.x + box.width <= width + 1,
        `${where}, ${id} is within ${width} px`,
      );
      // Long names may push the keys down on a small screen, never out of reach.
      const bottom = await page.evaluate(() => document.getElementById("clock").scrollHeight);
      assert.ok(box.y + box.height <= Math.max(height, bottom), `${where}, ${id} can be reached`);
    }
    // A modification that is out of sight protects nobody; only names beyond all measure may scroll.
    if (!interval.say.includes("window.taken")) {
      const [high, room] = await page.evaluate(() => {
        const coming = document.getElementById("coming");
        return [coming.scrollHeight, coming.clientHeight];
      });
      assert.ok(high <= room + 1, `${where} at ${width} px, what comes next: ${high} > ${room}`);
    }
    await page.keyboard.press("ArrowRight");
  }
  await page.click(".settings summary");
  await fits("#clock", "the settings");
}
