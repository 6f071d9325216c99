import type { Locator, Page } from "playwright";
import type { Blend } from "../../src/engine/blend.js";
import { blendToPoint, type Frame, type Point } from "../../src/engine/frame.js";

/** The bench as a user handles it: gestures with names, and what can be read off the screen. */
export class BenchPage {
  readonly page: Page;
  readonly url: string;

  constructor(page: Page, url: string) {
    this.page = page;
    this.url = url;
  }

  async open(code = ""): Promise<void> {
    await this.page.goto(this.url + (code ? `#${code}` : ""));
    await this.page.locator("triangle-plane svg").waitFor();
  }

  /** On a phone the recipe is a sheet, and the lesser tools of the header are in a menu. */
  async openRecipe(): Promise<void> {
    await this.page.getByRole("button", { name: "Open recipe" }).click();
  }

  row(feature: string): Locator {
    return this.page.locator(`reed-feature-row#${feature}`);
  }

  /** What a row says besides its value. */
  async remark(feature: string): Promise<string> {
    const said = await this.row(feature).locator(".remark:visible, .blank").allInnerTexts();
    return said.join(" ");
  }

  slider(feature: string): Locator {
    return this.row(feature).locator("input[type=range]");
  }

  field(feature: string): Locator {
    return this.row(feature).locator("input[type=text]");
  }

  async type(feature: string, value: string): Promise<void> {
    await this.field(feature).fill(value);
    await this.field(feature).press("Enter");
    await this.field(feature).blur();
  }

  async value(feature: string): Promise<number> {
    return Number(await this.field(feature).inputValue());
  }

  async pickUnit(name: "mm" | "inch" | "1/1000 inch"): Promise<void> {
    await this.page.getByRole("combobox", { name: "Unit" }).selectOption({ label: name });
  }

  async pickReed(name: string): Promise<void> {
    await this.page.getByRole("combobox", { name: "Reed" }).selectOption(name);
  }

  button(name: string): Locator {
    return this.page.getByRole("button", { name, exact: true });
  }

  /** The three corners on the screen, in the order high, low, loud. */
  async frame(): Promise<Frame> {
    return this.page.locator("triangle-plane svg").evaluate((svg): Frame => {
      const box = svg.getBoundingClientRect();
      const numbers = svg
        .querySelector(".side")!
        .getAttribute("d")!
        .match(/[\d.]+/g)!
        .map(Number);
      const corner = (i: number): Point => [
        box.left + numbers[2 * i]!,
        box.top + numbers[2 * i + 1]!,
      ];
      return [corner(0), corner(1), corner(2)];
    });
  }

  /** Where the point stands on the screen. */
  async point(): Promise<Point> {
    return this.page.locator("triangle-plane svg .handle").evaluate((handle): Point => {
      const box = (handle as SVGElement).ownerSVGElement!.getBoundingClientRect();
      const [x, y] = handle
        .getAttribute("transform")!
        .match(/[\d.]+/g)!
        .map(Number);
      return [box.left + x!, box.top + y!];
    });
  }

  async place(blend: Blend): Promise<Point> {
    return blendToPoint(blend, await this.frame());
  }

  /** Drags the point with the mouse, in ten moves. */
  async dragPoint(to: Blend): Promise<void> {
    const [x, y] = await this.point();
    const [toX, toY] = await this.place(to);
    await this.page.mouse.move(x, y);
    await this.page.mouse.down();
    await this.page.mouse.move(toX, toY, { steps: 10 });
    await this.page.mouse.up();
  }

  async clickTriangle(at: Blend): Promise<void> {
    const [x, y] = await this.place(at);
    await this.page.mouse.click(x, y);
  }

  async tapTriangle(at: Blend): Promise<void> {
    const [x, y] = await this.place(at);
    await this.page.touchscreen.tap(x, y);
  }

  /** Drags the point with one finger. */
  async dragPointByTouch(to: Blend): Promise<void> {
    const from = await this.point();
    const goal = await this.place(to);
    await this.touch([from, between(from, goal, 0.3), between(from, goal, 0.7), goal]);
  }

  /** One finger along a way, through the browser's own touch input. */
  async touch(way: readonly Point[]): Promise<void> {
    const client = await this.page.context().newCDPSession(this.page);
    const send = (type: "touchStart" | "touchMove" | "touchEnd", points: readonly Point[]) =>
      client.send("Input.dispatchTouchEvent", {
        type,
        touchPoints: points.map(([x, y]) => ({ x, y })),
      });
    await send("touchStart", [way[0]!]);
    for (const point of way.slice(1)) {
      await send("touchMove", [point]);
      await this.page.waitForTimeout(40); // a finger moves once a frame; faster moves are merged by the browser
    }
    await send("touchEnd", []);
    await client.detach();
  }

  /** The shares in whole per cent, as the number fields show them. */
  async shares(): Promise<number[]> {
    const fields = this.page.locator("reed-shares input[type=number]");
    return await fields.evaluateAll((all) =>
      all.map((field) => Number((field as HTMLInputElement).value)),
    );
  }

  async sentence(): Promise<string> {
    return (await this.page.locator("reed-sentence p").innerText()).trim();
  }

  async stoppedLine(): Promise<string> {
    return (await this.page.locator(".stopped").innerText()).trim();
  }

  /** The address, once it has been told. */
  async code(): Promise<string> {
    await this.page.waitForTimeout(350);
    return new URL(this.page.url()).hash.slice(1);
  }
}

function between(a: Point, b: Point, share: number): Point {
  return [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])];
}
