import { css } from "lit";

/** The plan page: one column on a phone; then the recipe beside it; then plan and triangle side by side too. */
export const planGridStyle = css`
  main.planPage > * {
    min-width: 0;
  }
  @container page (min-width: 62rem) {
    main.planPage {
      grid-template-areas:
        "place side"
        "plan side"
        "gains side";
      grid-template-columns: minmax(0, 1.25fr) minmax(27rem, 1fr);
      grid-template-rows: auto auto 1fr;
    }
    /* Steps are long: the triangle must not lie over them. */
    main.planPage > .place.sticks {
      position: static;
    }
    main.planPage > .plan {
      grid-area: plan;
    }
    main.planPage > .gains {
      grid-area: gains;
    }
  }
  @container page (min-width: 84rem) {
    main.planPage {
      grid-template-areas:
        "place plan side"
        "gains plan side";
      grid-template-columns: minmax(0, 1.1fr) minmax(0, 1fr) minmax(27.5rem, 30rem);
      grid-template-rows: auto 1fr;
    }
  }
  @container page (min-width: 100rem) {
    main.planPage {
      grid-template-columns: minmax(0, 1.1fr) minmax(0, 1fr) 34rem;
    }
  }
  /* The bench card: triangle beside the plan, nothing else. */
  @media print {
    main.planPage {
      grid-template-areas: "place plan";
      grid-template-columns: minmax(0, 3fr) minmax(0, 7fr);
      grid-template-rows: auto;
      gap: 0.4rem 1.2rem;
    }
    main.planPage > .plan {
      grid-area: plan;
    }
    main.planPage > .side,
    main.planPage > .gains,
    main.planPage > .trouble {
      display: none;
    }
  }
`;
