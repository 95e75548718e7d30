// axe-core finds no violation of WCAG 2.2, level A or AA, on the sheet and in the clock, in light
// and dark.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { files, intervals, openAtNoon, withBrowser } from "./browser.mjs";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

async function look(page, where) {
  const { violations, passes } = await page.evaluate(
    (values) => axe.run(document, { runOnly: { type: "tag", values } }),
    RULES,
  );
  const words = violations.map(
    (it) => `${it.id}: ${it.help}\n` + it.nodes.map((node) => "  " + node.html).join("\n"),
  );
  assert.deepEqual(words, [], where);
  assert.ok(passes.length > 10, where + ": enough was looked at");
}

await withBrowser(async (browser) => {
  for (const colorScheme of ["light", "dark"]) {
    const { page, done } = await openAtNoon(browser, files[0], { colorScheme });
    // Axe waits by timers, which only the check moves here: they are let run.
    await page.clock.resume();
    await page.evaluate(AXE);
    await look(page, colorScheme + ", the page");
    await page.selectOption("#theme", colorScheme === "light" ? "dark" : "light");
    await look(page, colorScheme + ", the other colours chosen");
    if (await page.locator("#session-data").count()) {
      await page.click("#open-clock");
      const seen = new Set();
      for (const interval of await intervals(page)) {
        const kind = interval.kind + (interval.now?.instead.length ? ", modified" : "");
        if (!seen.has(kind)) {
          seen.add(kind);
          await look(page, `${colorScheme}, the clock: ${kind}`);
        }
        await page.keyboard.press("ArrowRight");
      }
      await look(page, colorScheme + ", the end");
      await page.click(".settings summary");
      await look(page, colorScheme + ", the settings");
    }
    await done();
  }
});
