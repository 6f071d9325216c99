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
    .both {
      gap: 0.6rem;
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
