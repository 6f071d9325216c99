import { css } from "lit";

/** The sheet beside the drawing, or over it on a phone; on paper only the table. */
export const measurePageStyle = css`
  :host {
    display: block;
    container-type: inline-size;
    min-width: 0;
  }
  .sheet {
    max-width: 72rem;
    margin-inline: auto;
  }
  header {
    display: flex;
    flex-wrap: wrap;
    gap: 0.3rem 1.5rem;
    align-items: center;
    justify-content: space-between;
    margin-bottom: 0.8rem;
  }
  .progress {
    display: flex;
    flex-wrap: wrap;
    gap: 0.1rem 0.8rem;
    align-items: center;
    margin: 0;
  }
  .progress span {
    color: var(--ink-soft);
    overflow-wrap: anywhere;
  }
  progress {
    width: 9rem;
    accent-color: var(--accent);
  }
  .jump {
    display: flex;
    flex-wrap: wrap;
    gap: 0.4rem;
    align-items: center;
    max-width: 100%;
    color: var(--ink-soft);
  }
  .jump select {
    min-width: 0;
    max-width: 100%;
    color: var(--ink);
  }
  .both {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 1.25rem;
  }
  .step {
    min-width: 0;
    padding: 0.9rem 1rem 1rem;
    border: 1px solid var(--rule);
    border-radius: 10px;
    background: var(--card);
  }
  .turn {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem;
    max-width: 40rem;
    margin-top: 1rem;
  }
  .turn button {
    flex: 1 1 6rem;
    min-height: 3rem;
  }
  .main {
    border: 2px solid var(--accent);
    font-weight: 650;
  }
  .aside {
    margin: 0.8rem 0 0;
  }
  .aside button {
    min-height: 2.75rem;
  }
  figure,
  aside {
    min-width: 0;
    margin: 0;
  }
  @container (max-width: 30rem) {
    header {
      margin-bottom: 0.5rem;
    }
    .both {
      gap: 0.6rem;
    }
    .jump {
      flex: 1 1 8rem;
    }
    .jump span {
      position: absolute;
      width: 1px;
      height: 1px;
      overflow: hidden;
      clip-path: inset(50%);
    }
    .jump select {
      width: 100%;
    }
    progress {
      display: none;
    }
  }
  @container (min-width: 48rem) {
    .both {
      grid-template-areas:
        "step figure"
        "step place";
      grid-template-columns: minmax(0, 1.5fr) minmax(15rem, 1fr);
      grid-template-rows: auto 1fr;
    }
    .step {
      grid-area: step;
      align-self: start;
    }
    figure {
      grid-area: figure;
    }
    aside {
      grid-area: place;
    }
  }
  measure-paper {
    display: none;
  }
  @media print {
    .sheet {
      display: none;
    }
    measure-paper {
      display: block;
    }
  }
`;
