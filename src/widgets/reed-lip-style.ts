import { css } from "lit";

/** The panel: one column with the two controls in sight on a phone, two or three columns where there is room. */
export const reedLipStyle = css`
  :host {
    display: block;
    min-width: 0;
    container: lip / inline-size;
  }
  header p {
    max-width: 46rem;
    margin: 0.25rem 0;
  }
  h2 {
    font-size: 1.25rem;
  }
  .soft {
    color: var(--ink-soft);
    font-size: 0.8125rem;
  }
  .refused {
    color: var(--loud-word);
    font-weight: 600;
  }
  .work {
    display: flex;
    flex-direction: column;
    gap: 1rem;
    margin-top: 0.8rem;
  }
  .press {
    display: contents;
  }
  .pressures {
    padding-block: 0.2rem 0.4rem;
    border-bottom: 1px solid var(--rule);
    background: var(--ground);
  }
  .card {
    min-width: 0;
    padding: 0.9rem 1rem 1rem;
    border: 1px solid var(--rule);
    border-radius: 10px;
    background: var(--card);
  }
  .press > p {
    margin: 0;
  }
  .card.whole {
    margin-top: 1rem;
  }
  .bare {
    padding: 0;
    border: 0;
    background: none;
  }
  @media (min-height: 35rem) {
    @container lip (max-width: 45.99rem) {
      .pressures {
        position: sticky;
        top: 0;
        z-index: 1;
      }
    }
  }
  @container lip (max-width: 45.99rem) {
    .card {
      padding: 0.8rem 0.8rem 0.9rem;
    }
  }
  @container lip (min-width: 46rem) {
    .work {
      display: grid;
      grid-template: "press region" auto "flow flow" auto "dials dials" auto / minmax(
          0,
          1fr
        ) minmax(0, 1fr);
    }
    .press {
      display: grid;
      gap: 0.8rem;
      grid-area: press;
      grid-template-columns: minmax(0, 1fr);
      align-content: start;
      padding: 0.9rem 1rem 1rem;
      border: 1px solid var(--rule);
      border-radius: 10px;
      background: var(--card);
    }
    .press .card {
      padding: 0;
      border: 0;
      border-radius: 0;
    }
    .pressures {
      padding: 0;
      border: 0;
      background: none;
    }
    .region {
      grid-area: region;
    }
    .flow {
      grid-area: flow;
    }
    .dials {
      grid-area: dials;
    }
  }
  @container lip (min-width: 74rem) {
    .work {
      grid-template: "press region flow" auto "dials dials dials" auto / minmax(0, 1.05fr) minmax(
          0,
          0.75fr
        ) minmax(0, 1.2fr);
    }
  }
  @media print {
    .card,
    .press {
      break-inside: avoid;
    }
    .card.long {
      break-inside: auto;
    }
    .pressures {
      position: static !important;
    }
  }
`;
