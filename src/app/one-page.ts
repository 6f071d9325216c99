import { isDemo } from "../reed/demo-reeds.js";
import { calendarDay, dayName } from "./calendar-day.js";
import { saveFile } from "../widgets/picture-file.js";
import { stateInside, stateMark } from "./state-inside.js";

/**
 * The page of one file with another state inside.
 *
 * @example withState('<meta name="reedpoint-state" content="" />', "v=1") → '<meta name="reedpoint-state" content="v=1" />'
 */
export function withState(page: string, code: string): string {
  const safe = code.replaceAll("&", "&amp;").replaceAll('"', "&quot;");
  const place = new RegExp(`(<meta name="${stateMark}" content=")[^"]*"`);
  if (!place.test(page)) throw new Error(`withState: the page has no <meta name="${stateMark}">`);
  return page.replace(place, (_whole, before: string) => `${before}${safe}"`);
}

/** This very page, as its file was before it ran. */
function ownSource(page: Document): string {
  return `<!doctype html>\n<html lang="en">\n${page.head.outerHTML}\n${page.body.outerHTML}\n</html>\n`;
}

async function templateBeside(page: Document): Promise<string> {
  const answer = await fetch(new URL("reedpoint.html", page.baseURI));
  if (!answer.ok) throw new Error(`savePage: reedpoint.html answers ${answer.status}`);
  return answer.text();
}

/** What a saved page is called: after a demo reed or the day. Nobody's name is in the name of a file. */
export function pageName(reed: string, day: string): string {
  const name = isDemo(reed) ? `-${reed.toLowerCase()}` : "";
  return `reedpoint${name}-${day}.html`;
}

/** Saves the whole product with a state inside as one file, which opens from a disk. */
export async function savePage(page: Document, code: string, reed: string): Promise<void> {
  const source = stateInside(page) === undefined ? await templateBeside(page) : ownSource(page);
  const name = pageName(reed, dayName(calendarDay(new Date())));
  saveFile(new Blob([withState(source, code)], { type: "text/html" }), name);
}
