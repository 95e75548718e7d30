// Prints a page on A4 and on Letter, in the colours of a dark device, beside the page.
import { files, open, withBrowser } from "./browser.mjs";

await withBrowser(async (browser) => {
  const { page, done } = await open(browser, files[0], { colorScheme: "dark" });
  for (const format of ["A4", "Letter"]) {
    await page.pdf({
      path: files[0].replace(/html$/, format + ".pdf"),
      format,
      printBackground: true,
    });
  }
  await done();
});
