import { atom, feedEntries } from '../lib/feed.ts';
import { knowledge } from '../lib/knowledge.ts';
import { absolute } from '../lib/place.ts';

export const GET = () => new Response(atom(feedEntries(knowledge), absolute));
