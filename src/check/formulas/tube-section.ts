export { drilledSectionModulus, secondMoment, sectionModulus, wallArea } from '../../model/index.ts';
