/** Elements that HTML leaves open. */
const VOID = ["meta", "br", "hr", "img", "input", "link"];

/** What is not well-formed in a page: every element closed in order, every attribute quoted, ids once and found. */
export function faultsOf(html: string): readonly string[] {
  const body = html.replace(/<!DOCTYPE html>/, "").replace(/<style>[\s\S]*?<\/style>/g, "");
  const faults: string[] = [];
  const open: string[] = [];
  for (const match of body.matchAll(/<(\/?)([a-z][a-z0-9]*)((?:\s+[\w-]+(?::[\w-]+)?="[^"<]*"|\s+[\w-]+="[^"<]*")*)\s*(\/?)>|[<>]/gi)) {
    const [tag, slash, name, , self] = match;
    if (name === undefined) faults.push(`stray ${tag} at ${body.slice(Math.max(0, match.index - 20), match.index + 20)}`);
    else if (slash === "/") {
      if (open.pop() !== name) faults.push(`</${name}> closes nothing`);
    } else if (self !== "/" && !VOID.includes(name)) open.push(name);
  }
  const ids = [...body.matchAll(/\sid="([^"]*)"/g)].map((match) => match[1]!);
  const named = [...body.matchAll(/\s(?:aria-labelledby|aria-describedby|for)="([^"]*)"/g)].flatMap((match) => match[1]!.split(" "));
  const bare = [...body.matchAll(/&(?!(?:amp|lt|gt|quot|#\d+);)/g)].map((match) => `bare & at ${body.slice(match.index, match.index + 20)}`);
  return [
    ...faults, ...open.map((name) => `<${name}> is not closed`), ...bare,
    ...ids.filter((id, i) => ids.indexOf(id) !== i).map((id) => `id ${id} twice`), ...named.filter((id) => !ids.includes(id)).map((id) => `no id ${id}`),
  ];
}
