// What the checks share: a browser, a page from disk, and a watch on what it asks for.
import assert from "node:assert/strict";
import { pathToFileURL } from "node:url";
import { chromium } from "playwright-core";

export const files = process.argv.slice(2);
export const NOON = new Date("2026-01-01T12:00:00Z");

const FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** Runs a check with a browser and closes it, whatever happens. */
export async function withBrowser(check) {
  const browser = await chromium.launch({ executablePath: process.env.CHROMIUM, args: FLAGS });
  try {
    await check(browser);
  } finally {
    await browser.close();
  }
}

/**
 * Opens a file. The page may load nothing but the file itself and must report no error; done()
 * holds it to that.
 */
export async function open(browser, file, options = {}, prepare = async () => {}) {
  const context = await browser.newContext(options);
  const page = await context.newPage();
  const url = pathToFileURL(file).href;
  const faults = [];
  page.on("request", (request) => {
    if (request.url() !== url) {
      faults.push("asked for " + request.url());
    }
  });
  page.on("console", (message) => {
    if (message.type() === "error" || message.type() === "warning") {
      faults.push("console: " + message.text());
    }
  });
  page.on("pageerror", (error) => faults.push("error: " + error));
  page.on("dialog", (dialog) => {
    faults.push("dialog: " + dialog.message());
    dialog.dismiss();
  });
  await prepare(page);
  await page.goto(url);
  const done = async () => {
    assert.deepEqual(faults, []);
    await context.close();
  };
  return { page, done };
}

/** Opens a file under a clock that only the check moves. */
export async function openAtNoon(browser, file, options = {}, prepare = async () => {}) {
  return open(browser, file, options, async (page) => {
    await prepare(page);
    await page.clock.install({ time: NOON });
    await page.clock.pauseAt(new Date(NOON.getTime() + 1000));
  });
}

/** The intervals that the page's clock runs by. */
export async function intervals(page) {
  return page.evaluate(
    () => JSON.parse(document.getElementById("session-data").textContent).intervals,
  );
}

export const text = (page, selector) => page.locator(selector).innerText();

/** What the clock shows. */
export async function shown(page) {
  return page.evaluate(() => {
    const words = (id) => {
      const element = document.getElementById(id);
      return element.hidden ? "" : element.textContent;
    };
    return {
      seconds: words("seconds"),
      kind: words("kind"),
      place: words("place"),
      name: words("name"),
      passed: words("passed"),
    };
  });
}

/** What the clock has to show after so many milliseconds, by the data alone. */
export function expected(all, passed) {
  const interval = all.find((it) => it.end * 1000 > passed);
  if (!interval) {
    return { seconds: "0", kind: "End" };
  }
  const left = Math.ceil(interval.end - passed / 1000);
  const seconds =
    left < 100
      ? String(left)
      : Math.floor(left / 60) + ":" + String(left % 60).padStart(2, "0");
  return { seconds, kind: interval.word };
}
