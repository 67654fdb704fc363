import type { PlanWeather } from '@sedgeline/engine/session';
import type { DogRow, DogsView, PlanView } from '@sedgeline/projections';
import { type Ref, useRef } from 'react';
import { NumberKeys } from '../../parts/number-keys.tsx';
import { useWords } from '../../parts/words-context.tsx';
import type { PlanWishes as Wishes } from '../../state/plan-drafts.ts';
import { PlanWishes } from './plan-wishes.tsx';

const MINUTES = { least: 1, most: 60, step: 5 } as const;

/** For whom, how long, where and with what: the minutes in sight, the rest one tap away. */
export function PlanHead(props: {
  readonly dog: DogRow;
  readonly view: PlanView | null;
  readonly wishes: Wishes;
  readonly weather: PlanWeather;
  readonly grounds: DogsView['grounds'];
  readonly isOpen: boolean;
  readonly weatherRef: Ref<HTMLFieldSetElement>;
  readonly onOpen: (isOpen: boolean) => void;
  readonly onWish: (change: Partial<Wishes>, weather?: PlanWeather) => void;
}) {
  const { dog, view, wishes, weather, grounds, isOpen, weatherRef, onOpen, onWish } = props;
  const { planScreen, trade } = useWords();
  const { wish } = planScreen;
  const details = useRef<HTMLDetailsElement>(null);
  const { where, kit, focus } = wishes;
  const groundName = where.by === 'new' ? where.name || wish.newGround : (view?.groundName ?? null);
  return (
    <header className="plan-head not-printed">
      <h1>{planScreen.title(dog.name)}</h1>
      <NumberKeys
        label={wish.minutes}
        value={wishes.minutes}
        {...MINUTES}
        unit={wish.minutesUnit}
        lessLabel={wish.less(wish.minutes)}
        moreLabel={wish.more(wish.minutes)}
        onSet={(minutes) => onWish({ minutes })}
      />
      <details
        ref={details}
        className="plan-wish"
        open={isOpen}
        onToggle={(event) => onOpen(event.currentTarget.open)}
      >
        <summary>
          <b>{wish.change}</b>
          <span className="soft">
            {planScreen.wished(
              groundName,
              kit ?? undefined,
              weather,
              focus === null ? null : trade.skillInWords(focus),
            )}
          </span>
        </summary>
        {isOpen && (
          <PlanWishes
            wishes={wishes}
            weather={weather}
            grounds={grounds}
            ground={view?.groundName == null ? null : (view.request.ground ?? null)}
            skills={dog.skills.map(({ skill }) => skill)}
            weatherRef={weatherRef}
            onWish={onWish}
          />
        )}
      </details>
    </header>
  );
}
