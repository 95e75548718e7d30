// Without script it is a plain run sheet: nothing dead to press, and no clock.
import assert from "node:assert/strict";
import { files, open, withBrowser } from "./browser.mjs";

await withBrowser(async (browser) => {
  const { page, done } = await open(browser, files[0], { javaScriptEnabled: false });
  assert.ok(await page.locator(".sheet .row").first().isVisible());
  assert.equal(await page.locator("button:visible, select:visible, input:visible").count(), 0);
  assert.ok(await page.locator("#clock").isHidden());
  await done();
});
