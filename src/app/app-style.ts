import { css } from "lit";

/** The page around the widgets: one column on a phone, two where there is room. */
export const appStyle = css`
  :host {
    display: block;
    min-height: 100vh;
    background: var(--ground);
  }
  .unitChoice {
    min-width: 0;
    max-width: 100%;
  }
  main {
    display: grid;
    gap: 1.25rem clamp(1rem, 2.5cqi, 2.5rem);
    grid-template-columns: minmax(0, 1fr);
    max-width: 104rem;
    margin: 0 auto;
    padding: 1rem clamp(0.75rem, 2.5cqi, 2rem) 2rem;
  }
  .page {
    container: page / inline-size;
  }
  .place {
    min-width: 0;
  }
  .under {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.75rem;
    width: 100%;
    max-width: 44rem;
    margin-inline: auto;
  }
  .stopped {
    margin: 0;
    color: var(--loud-word);
    font-weight: 600;
  }
  .card {
    align-self: start;
    min-width: 0;
    padding: 0.9rem 1rem 1rem;
    border: 1px solid var(--rule);
    border-radius: 10px;
    background: var(--card);
  }
  .cardHead {
    display: flex;
    flex-wrap: wrap;
    gap: 0.4rem;
    align-items: center;
    justify-content: space-between;
    margin-bottom: 0.5rem;
  }
  .notice {
    position: fixed;
    inset: auto 0 1rem;
    z-index: 3;
    display: flex;
    gap: 0.75rem;
    align-items: center;
    justify-content: space-between;
    width: fit-content;
    max-width: min(44rem, calc(100% - 1.5rem));
    margin: 0 auto;
    padding: 0.5rem 0.75rem;
    border: 1px solid var(--accent);
    border-radius: 8px;
    background: var(--card);
    box-shadow: 0 4px 16px rgb(0 0 0 / 20%);
  }
  main:focus,
  .card:focus {
    outline: none;
  }
  .story {
    max-width: 38em;
    margin: 0;
    color: var(--ink-soft);
  }
  .honest {
    max-width: 44rem;
    margin: 0;
    color: var(--ink-soft);
    font-size: 0.8125rem;
  }
  details summary {
    min-height: 1.75rem;
    color: var(--ink-soft);
    cursor: pointer;
  }
  details p {
    margin: 0.2rem 0;
  }
  /* In one column the triangle stays in sight while sliders further down move its point. */
  @media (min-height: 35rem) {
    @container page (max-width: 61.99rem) {
      .place {
        position: sticky;
        top: 0;
        z-index: 1;
        margin-inline: calc(-1 * clamp(0.75rem, 2.5cqi, 2rem));
        padding-top: 0.4rem;
        border-bottom: 1px solid var(--rule);
        background: var(--ground);
      }
    }
  }
  .drawing {
    order: 1;
  }
  .recipe {
    order: 2;
  }
  @container page (min-width: 62rem) {
    main {
      grid-template-areas:
        "place recipe"
        "under recipe"
        "drawing recipe";
      grid-template-columns: minmax(0, 1.25fr) minmax(27rem, 1fr);
      grid-template-rows: auto auto 1fr;
    }
    .place {
      grid-area: place;
    }
    .under {
      grid-area: under;
      align-content: start;
    }
    .recipe {
      grid-area: recipe;
    }
    .drawing {
      grid-area: drawing;
    }
  }
  @container page (min-width: 88rem) {
    main {
      grid-template-areas:
        "drawing place recipe"
        "drawing under recipe";
      grid-template-columns: minmax(14rem, 19rem) minmax(0, 1fr) minmax(30.5rem, 34rem);
      grid-template-rows: auto 1fr;
    }
  }
  .printOnly {
    display: none;
  }
  /* One reed on one page: drawing beside triangle and sentence, the recipe below in two columns. */
  @media print {
    bench-header,
    bench-options,
    reed-shares,
    .notice,
    .noPrint {
      display: none;
    }
    .printOnly {
      display: block;
      margin: 0 0 0.4rem;
      font-size: 1.5rem;
    }
    main {
      display: grid;
      grid-template-areas:
        "drawing place"
        "drawing under"
        "recipe recipe";
      grid-template-columns: minmax(0, 3fr) minmax(0, 7fr);
      grid-template-rows: auto 1fr auto;
      gap: 0.4rem 0.6rem;
      padding: 0;
    }
    .place {
      position: static;
      grid-area: place;
      margin: 0;
      border: 0;
    }
    .under {
      grid-area: under;
      gap: 0.4rem;
    }
    .drawing {
      grid-area: drawing;
    }
    .recipe {
      grid-area: recipe;
    }
    .card {
      padding: 0.3rem;
      border: 0;
      break-inside: avoid;
    }
    .unitChoice {
      display: none;
    }
  }
`;
