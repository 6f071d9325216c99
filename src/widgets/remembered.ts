/** A function that keeps its last answer for as long as it is asked with the very same arguments. */
export function remembered<Given extends readonly unknown[], Answer>(
  compute: (...given: Given) => Answer,
): (...given: Given) => Answer {
  let last: { readonly given: Given; readonly answer: Answer } | undefined;
  return (...given) => {
    if (!last?.given.every((one, i) => Object.is(one, given[i]))) {
      last = { given, answer: compute(...given) };
    }
    return last.answer;
  };
}
