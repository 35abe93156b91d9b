import pc from "picocolors";

/** Where words go, as an argument, so that commands can be tried without a terminal. */
export interface Screen {
  /** Standard output. */
  readonly say: (text: string) => void;
  /** Standard error: what is not part of the answer. */
  readonly aside: (text: string) => void;
  /** Columns of standard output, when it is a terminal. */
  readonly columns: number | null;
  /** Standard error is a terminal that a line can be redrawn on. */
  readonly live: boolean;
  /** Headings in bold. */
  readonly heading: (text: string) => string;
  /** What matters less, dimmed. */
  readonly soft: (text: string) => string;
}

/** Columns where nobody says how many there are, and the fewest that text can be read in. */
const USUAL_COLUMNS = 80;
const LEAST_COLUMNS = 40;

/** Width that text is wrapped to. */
export function widthOf(screen: Screen): number {
  return Math.max(LEAST_COLUMNS, screen.columns ?? USUAL_COLUMNS);
}

/** The process's own streams. */
export function terminalScreen(): Screen {
  const plain = !process.stdout.isTTY || process.env["NO_COLOR"] !== undefined;
  return {
    say: (text) => void process.stdout.write(text),
    aside: (text) => void process.stderr.write(text),
    columns: process.stdout.isTTY && process.stdout.columns > 0 ? process.stdout.columns : null,
    live: Boolean(process.stderr.isTTY),
    heading: (text) => (plain ? text : pc.bold(text)),
    soft: (text) => (plain ? text : pc.dim(text)),
  };
}
