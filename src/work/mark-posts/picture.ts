import type { Model } from '../../model/index.ts';
import {
  body, box, lettersWritten, markedAlike, pencil, postKinds, spacingPicture, straight, stroke, together, type DrawnPicture, type Ink, type Paper, type PostKind, type WorkPicture,
} from '../../draw/work-kit/index.ts';

/** Places for the decks measured off along the posts that lie side by side. */
const pictogram: Ink = together(
  body(box(2.5, 36, 43, 8.5)),
  body(box(2.5, 23, 43, 8.5)),
  stroke(`${straight(12, 19.5, 12, 46.5)}${straight(29, 19.5, 29, 46.5)}`, 3),
  pencil(29, 20, -62, 18, 4),
);

/** One picture for each kind of post. */
export const picture: WorkPicture = {
  pictogram,
  flat: ({ model, papers }) => postKinds(model, markedAlike).map((post) => postMarks(model, post, papers.posts)),
};

/** Marks for the lower end of each sleeve, counted from the post's foot. */
function postMarks(model: Model, post: PostKind, paper: Paper): DrawnPicture {
  const { kit } = model;
  return spacingPicture({
    letter: lettersWritten(model).get(post.ids[0] ?? '') ?? null,
    length: post.length,
    diameter: kit.tube.outsideDiameter,
    marks: post.marks,
    edge: 'lower',
    sleeve: { length: kit.joint.sleeveAbove + kit.joint.sleeveBelow, diameter: kit.joint.sleeveDiameter },
    count: post.count,
  }, paper);
}
