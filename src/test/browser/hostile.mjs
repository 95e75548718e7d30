// Texts that try to be markup, script or the end of an element are shown as text, everywhere.
import assert from "node:assert/strict";
import { files, intervals, openAtNoon, withBrowser } from "./browser.mjs";

await withBrowser(async (browser) => {
  const { page, done } = await openAtNoon(browser, files[0]);
  const all = await intervals(page);
  const sane = async () => {
    const found = await page.evaluate(() => ({
      taken: window.taken,
      strange: document.querySelectorAll("img, script:not([type]) ~ script, iframe, object").length,
      scripts: document.querySelectorAll("script").length,
      handlers: [...document.querySelectorAll("*")].filter((it) =>
        [...it.attributes].some((attribute) => attribute.name.startsWith("on")),
      ).length,
    }));
    assert.deepEqual(found, { taken: undefined, strange: 0, scripts: 2, handlers: 0 });
  };
  const bad = "<script>window.taken=1</script><img src=x onerror=\"window.taken=2\">'\"`&amp;";
  await sane();
  assert.ok((await page.title()).includes(bad));
  for (const place of ["h1", ".name", ".setup", ".cue", ".watch", ".show", ".say", ".fetch li"]) {
    const first = page.locator("#page " + place).filter({ hasText: "window.taken" });
    assert.ok((await first.first().innerText()).includes(bad), place);
  }
  for (const place of [".coverage th[scope=row]", ".cautions li", ".facts dd"]) {
    const words = await page.locator("#page " + place).allInnerTexts();
    assert.ok(words.some((it) => it.toLowerCase().includes(bad.toLowerCase())), place);
  }
  await page.click("#open-clock");
  await page.click("#start");
  for (const interval of all) {
    if (interval.now) {
      assert.ok((await page.locator("#name").innerText()).includes("<img src=x"));
    }
    await sane();
    await page.keyboard.press("ArrowRight");
  }
  await done();
});
