// The same elements as a classic script, which leaves no name behind on the page: importing them defines them.
import * as elements from "./reed-elements.js";

void elements;
