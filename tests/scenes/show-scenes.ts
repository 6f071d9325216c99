import { scenes } from "./scenes.js";

for (const { name, says, make } of scenes) {
  const figure = document.createElement("figure");
  const caption = document.createElement("figcaption");
  caption.textContent = `${name}: ${says}`;
  figure.append(caption, make());
  document.body.append(figure);
}
