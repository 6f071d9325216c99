// The same elements as a classic script, which leaves no name behind on the page.
import "./reed-elements.js";
