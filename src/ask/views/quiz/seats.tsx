import { seats } from '../../quiz/topics.ts';
import { desk } from '../../wording/quiz-desk.en.ts';

/** The seats of a crew as the options of a choice. */
export const SeatOptions = ({ chosen }: { readonly chosen?: string | undefined }) => (
  <>
    {Object.keys(seats).map((id) => (
      <option value={id} selected={id === chosen}>
        {desk.seats[id]}
      </option>
    ))}
  </>
);
