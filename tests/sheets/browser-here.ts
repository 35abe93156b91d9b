import { findBrowser } from "../../src/files/browser.js";

const found = findBrowser();

/** A browser that prints pages, or undefined where the machine has none. */
export const BROWSER = found !== null && "path" in found ? found.path : undefined;
