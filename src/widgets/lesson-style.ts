import { css } from "lit";

/** What the parts of a lesson share. */
export const lessonStyle = css`
  :host {
    display: block;
    min-width: 0;
    container-type: inline-size;
  }
  p {
    margin: 0 0 0.6rem;
    max-width: 38em;
  }
  .soft {
    color: var(--ink-soft);
    font-size: 0.8125rem;
  }
  fieldset {
    min-width: 0;
    margin: 0 0 0.6rem;
    padding: 0;
    border: 0;
  }
  legend {
    padding: 0;
    font-weight: 650;
  }
  label.option {
    display: flex;
    gap: 0.6rem;
    align-items: baseline;
    max-width: 38em;
    min-height: 2.5rem;
    padding: 0.4rem 0.2rem;
    cursor: pointer;
  }
  label.option input {
    flex: none;
    width: 1.1rem;
    height: 1.1rem;
    margin: 0;
    transform: translateY(0.15rem);
  }
  .main {
    border-color: var(--accent);
    font-weight: 600;
  }
  /* A page for a class has no room for more, and no use for how to answer. */
  triangle-plane {
    width: 100%;
    max-width: var(--lesson-triangle, none);
    margin-inline: auto;
  }
  .help {
    display: var(--lesson-help, block);
  }
  .parts {
    display: grid;
    gap: 0.8rem;
    min-width: 0;
  }
  .beside {
    min-width: 0;
  }
  @container (min-width: 44rem) {
    .parts.two {
      grid-template-columns: minmax(0, 1.15fr) minmax(0, 1fr);
      column-gap: 1.6rem;
      align-items: start;
    }
  }
`;
