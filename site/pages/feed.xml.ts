import { absolute } from '../build/address.ts';
import { atom, feedEntries } from '../build/feed.ts';
import { knowledge } from '../build/knowledge.ts';

export const GET = () => new Response(atom(feedEntries(knowledge), absolute));
