import { afterEach, expect, test, vi } from "vitest";
import { bassoonModel } from "../../src/reed/bassoon.js";
import { define } from "../../src/widgets/define.js";
import { ReedReadings } from "../../src/widgets/reed-readings.js";

define("reed-readings", ReedReadings);

afterEach(() => {
  document.body.replaceChildren();
  vi.restoreAllMocks();
  vi.doUnmock("../../src/book/read-readings.js");
  vi.resetModules();
});

async function table(): Promise<ReedReadings> {
  const element = document.createElement("reed-readings") as ReedReadings;
  element.model = bassoonModel;
  document.body.append(element);
  await element.updateComplete;
  return element;
}

const text = (element: ReedReadings): string =>
  element.shadowRoot!.querySelector("[role=status]")!.textContent.replace(/\s+/g, " ").trim();

async function paste(element: ReedReadings, rows: string): Promise<void> {
  element.shadowRoot!.querySelector("textarea")!.value = rows;
  element.shadowRoot!.querySelector<HTMLButtonElement>("button.main")!.click();
  await vi.waitFor(() => expect(text(element)).not.toBe(""));
}

async function drop(element: ReedReadings, file: Partial<File>): Promise<void> {
  const event = new Event("drop", { cancelable: true });
  Object.assign(event, { dataTransfer: { files: [file], getData: () => "" } });
  element.shadowRoot!.querySelector(".drop")!.dispatchEvent(event);
  await vi.waitFor(() => expect(text(element)).not.toBe(""));
}

test("of many problems the first fifty are told, and how many more there are", async () => {
  const element = await table();
  await paste(element, "qqqq\t1\n".repeat(180));
  expect(element.shadowRoot!.querySelectorAll(".problems li")).toHaveLength(50);
  expect(text(element)).toContain("… and 130 more.");
});

test("a file that is too large is not read at all", async () => {
  const element = await table();
  const read = vi.fn<() => Promise<string>>();
  await drop(element, { name: "all.csv", size: 10_000_000, text: read });
  expect(read).not.toHaveBeenCalled();
  expect(text(element)).toContain("The file all.csv is too large");
});

test("a file that cannot be read is told by its name", async () => {
  const element = await table();
  await drop(element, {
    name: "gone.csv",
    size: 10,
    text: () => Promise.reject(new Error("gone")),
  });
  expect(text(element)).toContain("The file gone.csv could not be read");
});

test("without a connection the page says so, blames nothing else, and the table stays", async () => {
  const warn = vi.spyOn(console, "warn").mockImplementation(() => {});
  vi.doMock("../../src/book/read-readings.js", () => {
    throw new Error("no connection");
  });
  const element = await table();
  await paste(element, "tip\t0.1");
  expect(text(element)).toContain("could not be loaded: is the connection there?");
  expect(element.shadowRoot!.querySelector("textarea")!.value).toBe("tip\t0.1");
  expect(warn).toHaveBeenCalledOnce();
});
