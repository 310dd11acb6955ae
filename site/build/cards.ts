/** The card image of a page, by its address: of the flaw, repair or lesson that it is about, else of the site. */
export const cardUrl = (path: string): string => {
  const [top = '', id] = path.split('/').filter(Boolean);
  const folder = { defects: 'defects', remedies: 'remedies', learn: 'lessons' }[top];
  return folder && id ? `/cards/${folder}/${id}.jpg` : '/cards/halfdry.jpg';
};
