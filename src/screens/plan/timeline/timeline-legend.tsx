import type { ComponentChildren } from 'preact';
import { PLAN_WORDS } from '../../../words/plan/plan';

const Sign = ({ children }: { readonly children: ComponentChildren }) => (
  <svg viewBox="0 0 28 16" width="28" height="16" aria-hidden="true">
    {children}
  </svg>
);

/** What the shapes of the timeline mean. */
export const TimelineLegend = () => (
  <ul class="chart-legend">
    <li>
      <Sign>
        <rect class="timeline-work" x="12" y="2" width="4" height="12" />
      </Sign>
      {PLAN_WORDS.legend.work}
    </li>
    <li>
      <Sign>
        <path class="timeline-wait" d="M0 8H28" />
      </Sign>
      {PLAN_WORDS.legend.wait}
    </li>
    <li>
      <Sign>
        <rect class="timeline-band" x="1" y="1" width="26" height="14" fill="url(#timeline-hatch)" />
        <circle class="timeline-likely" cx="11" cy="8" r="5" />
      </Sign>
      {PLAN_WORDS.legend.band}
    </li>
    <li>
      <Sign>
        <path class="timeline-promised" d="M9 16V1l9 4l-9 4" />
      </Sign>
      {PLAN_WORDS.legend.promised}
    </li>
  </ul>
);
