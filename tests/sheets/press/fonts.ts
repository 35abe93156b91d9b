import { existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** Fonts that a browser is given. */
export interface FontSet {
  readonly name: string;
  readonly env: Readonly<Record<string, string>>;
}

/** The widest and the narrowest of the usual sans, where Linux keeps them. */
const SANS = [
  { name: "DejaVu Sans", folder: "/usr/share/fonts/truetype/dejavu" },
  { name: "Liberation Sans", folder: "/usr/share/fonts/truetype/liberation" },
] as const;

/** Letters as a printer sets them: a screen fits each to its dots, which makes a line up to a fiftieth wider. */
const UNFITTED = ["pattern", "font"].map((target) => `<match target="${target}"><edit name="hinting" mode="assign"><bool>false</bool></edit><edit name="hintstyle" mode="assign"><const>hintnone</const></edit></match>`).join("");

/** Without their sisters: asked for a sans that is not there, a machine takes the first it finds. */
const rejected = (folder: string): string => ["Serif", "Mono", "Math", "Condensed", "Narrow"].map((one) => `<selectfont><rejectfont><glob>${folder}/*${one}*</glob></rejectfont></selectfont>`).join("");

let made: readonly FontSet[] | null = null;

/** A set with each sans alone that the machine has; where it has neither, its own fonts as they are. */
export function fontsHere(): readonly FontSet[] {
  made ??= setsOf();
  return made;
}

function setsOf(): readonly FontSet[] {
  const there = SANS.filter(({ folder }) => existsSync(folder));
  if (there.length === 0) return [{ name: "this machine's fonts", env: {} }];
  const folder = mkdtempSync(join(tmpdir(), "inbye-fonts-"));
  process.once("exit", () => rmSync(folder, { recursive: true, force: true }));
  return there.map(({ name, folder: fonts }, i) => {
    const config = join(folder, `${i}.conf`);
    writeFileSync(config, `<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig><dir>${fonts}</dir><cachedir>${join(folder, `cache-${i}`)}</cachedir>${rejected(fonts)}${UNFITTED}</fontconfig>`);
    return { name, env: { FONTCONFIG_FILE: config } };
  });
}
