/** What a key asks for: undo, redo, or neither. In a text field the browser's own undo is what the user means. */
export function undoKey(event: KeyboardEvent): "undo" | "redo" | undefined {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return undefined;
  const [typing] = event.composedPath();
  const ownUndo =
    typing instanceof HTMLTextAreaElement ||
    (typing instanceof HTMLInputElement && typing.type === "text");
  if (ownUndo) return undefined;
  const key = event.key.toLowerCase();
  if (key === "z") return event.shiftKey ? "redo" : "undo";
  return key === "y" ? "redo" : undefined;
}
