import { css } from "lit";

/** The frame around list, lesson and review. */
export const lessonsPageStyle = css`
  :host {
    display: block;
    width: 100%;
    max-width: 60rem;
    margin-inline: auto;
  }
  .soft {
    color: var(--ink-soft);
    font-size: 0.875rem;
  }
  .back {
    min-height: 2.75rem;
    margin-bottom: 0.6rem;
  }
  .back[slot] {
    margin: 0;
  }
  .shelf {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 22rem), 1fr));
    gap: 1.2rem 2rem;
    margin-top: 1.6rem;
    padding-top: 1.2rem;
    border-top: 1px solid var(--rule);
  }
  .told {
    color: var(--loud-word);
    font-weight: 600;
  }
  .dropping {
    outline: 3px dashed var(--accent);
    outline-offset: 0.4rem;
  }
  @media print {
    .back,
    .shelf {
      display: none;
    }
  }
`;
