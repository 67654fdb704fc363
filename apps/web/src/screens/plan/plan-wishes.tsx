import { SKILLS, type Skill } from '@sedgeline/engine/ability';
import type { PlanWeather } from '@sedgeline/engine/session';
import type { DogsView } from '@sedgeline/projections';
import { type Ref, useId } from 'react';
import { Link } from 'wouter';
import { Choice } from '../../parts/choice.tsx';
import { NumberKeys } from '../../parts/number-keys.tsx';
import { useWords } from '../../parts/words-context.tsx';
import type { PlanWishes as Wishes } from '../../state/plan-drafts.ts';
import { groundAddress } from '../ground/ground-address.ts';
import { WeatherFields } from './weather-fields.tsx';

const NONE = 'none';
const NEW = 'new';
const KIT_FIRST = { posts: 2, dummies: 4 } as const;
const MOST_KIT = 20;

export interface PlanWishesProps {
  readonly wishes: Wishes;
  readonly weather: PlanWeather;
  readonly grounds: DogsView['grounds'];
  /** The ground that the plan is for, where it is one on record. */
  readonly ground: string | null;
  /** The dog's skills, those worked lately first. */
  readonly skills: readonly Skill[];
  readonly weatherRef: Ref<HTMLFieldSetElement>;
  readonly onWish: (change: Partial<Wishes>, weather?: PlanWeather) => void;
}

/** Where, with what, on what and in what weather: each change plans at once. */
export function PlanWishes(props: PlanWishesProps) {
  const { wishes, weather, grounds, ground, skills, weatherRef, onWish } = props;
  const { planScreen, trade } = useWords();
  const { wish } = planScreen;
  const nameId = useId();
  const { where, kit, focus } = wishes;
  const isNew = where.by === 'new';
  return (
    <div className="plan-wishes">
      <Choice
        legend={wish.ground}
        options={[
          ...grounds.map((one) => ({ value: one.ground, label: one.name })),
          { value: NEW, label: wish.newGround },
          { value: NONE, label: wish.groundNotSaid },
        ]}
        value={isNew ? NEW : (ground ?? NONE)}
        onChoose={(value) =>
          onWish({
            where:
              value === NONE
                ? { by: 'none' }
                : value === NEW
                  ? { by: 'new', name: '' }
                  : { by: 'known', ground: value },
          })
        }
      />
      {isNew && (
        <div className="field">
          <label htmlFor={nameId}>{wish.groundName}</label>
          <input
            id={nameId}
            autoComplete="off"
            defaultValue={where.name}
            onBlur={(event) => onWish({ where: { by: 'new', name: event.target.value.trim() } })}
          />
        </div>
      )}
      {!isNew && ground !== null && (
        <Link className="plan-ground" href={groundAddress(ground)}>
          {wish.drawings}
        </Link>
      )}
      <div className="plan-kit">
        <Choice
          legend={wish.kit}
          options={[
            { value: 'free', label: wish.kitFree },
            { value: 'counted', label: wish.kitCounted },
          ]}
          value={kit === null ? 'free' : 'counted'}
          onChoose={(value) => onWish({ kit: value === 'free' ? null : KIT_FIRST })}
        />
        {kit !== null && (
          <div className="plan-kit-counts">
            {(['dummies', 'posts'] as const).map((thing) => (
              <NumberKeys
                key={thing}
                label={wish[thing]}
                value={kit[thing]}
                least={0}
                most={MOST_KIT}
                step={1}
                lessLabel={wish.less(wish[thing])}
                moreLabel={wish.more(wish[thing])}
                onSet={(count) => onWish({ kit: { ...kit, [thing]: count } })}
              />
            ))}
          </div>
        )}
      </div>
      <WeatherFields weather={weather} fieldsRef={weatherRef} onSet={(day) => onWish({}, day)} />
      <Choice<Skill | typeof NONE>
        legend={wish.focus}
        options={[
          { value: NONE, label: wish.anything },
          ...[...new Set([...skills, ...SKILLS])].map((skill) => ({
            value: skill,
            label: trade.skill(skill),
          })),
        ]}
        value={focus ?? NONE}
        onChoose={(value) => onWish({ focus: value === NONE ? null : value })}
      />
    </div>
  );
}
