import { css } from "lit";

/** The page around the widgets: one column on a phone, two where there is room. */
export const gridStyle = css`
  :host {
    display: block;
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
  .card {
    align-self: start;
    min-width: 0;
    padding: 0.9rem 1rem 1rem;
    border: 1px solid var(--rule);
    border-radius: 10px;
    background: var(--card);
  }
  main:focus {
    outline: none;
  }
  /* The triangle stays in sight while what moves its point scrolls, where there is room for both. */
  .place.sticks {
    position: sticky;
    top: 0;
    z-index: 1;
    align-self: start;
    padding-bottom: 0.3rem;
    background: var(--ground);
  }
  @container page (max-width: 61.99rem) {
    .place.sticks {
      margin-inline: calc(-1 * clamp(0.75rem, 2.5cqi, 2rem));
      padding-top: 0.4rem;
      border-bottom: 1px solid var(--rule);
    }
  }
  .says,
  .under {
    width: 100%;
    max-width: 44rem;
    margin-inline: auto;
  }
  .side {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 1.25rem;
    align-content: start;
    min-width: 0;
  }
  main > .wide {
    min-width: 0;
  }
  @container page (min-width: 62rem) {
    main.lipPage {
      grid-template-areas: "wide side";
      grid-template-columns: minmax(0, 1.6fr) minmax(27rem, 1fr);
      grid-template-rows: auto;
    }
    main.lipPage > .wide {
      grid-area: wide;
    }
    /* The recipe stays beside a page that is longer than the window. */
    main.lipPage > .side {
      position: sticky;
      top: 0.75rem;
      overflow: auto;
      align-self: start;
      max-height: calc(100vh - 1.5rem);
    }
    main.benchPage {
      grid-template-areas:
        "place side"
        "says side"
        "under side"
        "drawing side";
      grid-template-columns: minmax(0, 1.25fr) minmax(27rem, 1fr);
      grid-template-rows: auto auto auto 1fr;
    }
    .place {
      grid-area: place;
    }
    .says {
      grid-area: says;
    }
    .under {
      grid-area: under;
    }
    .side {
      grid-area: side;
    }
    .drawing {
      grid-area: drawing;
    }
  }
  @container page (min-width: 88rem) {
    main.benchPage {
      grid-template-areas:
        "drawing place side"
        "drawing says side"
        "drawing under side";
      grid-template-columns: minmax(14rem, 19rem) minmax(0, 1fr) minmax(30.5rem, 34rem);
      grid-template-rows: auto auto 1fr;
    }
  }
  /* One reed on one page: drawing beside triangle and sentence, the recipe below in two columns. */
  @media print {
    main {
      gap: 0.4rem 0.6rem;
      padding: 0;
    }
    main.lipPage,
    main.measurePage {
      display: block;
    }
    main.lipPage > .side {
      display: none;
    }
    main.benchPage {
      grid-template-areas:
        "drawing place"
        "drawing says"
        "drawing under"
        "side side";
      grid-template-columns: minmax(0, 3fr) minmax(0, 7fr);
      grid-template-rows: auto auto 1fr auto;
    }
    .place,
    .place.sticks {
      position: static;
      grid-area: place;
      padding: 0;
      margin: 0;
      border: 0;
    }
    .says {
      grid-area: says;
    }
    .under {
      grid-area: under;
    }
    .drawing {
      grid-area: drawing;
    }
    .side {
      grid-area: side;
      gap: 0.3rem;
    }
    .card {
      padding: 0.3rem;
      border: 0;
      break-inside: avoid;
    }
  }
`;
