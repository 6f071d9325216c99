// The elements that show a reed as a classic script, which leaves no name behind on the page: importing them defines them.
import * as elements from "./elements-with-a-reed.js";

void elements;
