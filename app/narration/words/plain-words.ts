/** English words that sound like a word of the trade, or lack a letter of one, and that people say for themselves. */
export const plainWords: readonly string[] =
  `absolute absolutely according alike assert baked baking barking beach ballot band bands bearded bender bind binding binds blend blended
bold boost bored boring borrow bound bounded bounds braces bread brunch browse browsed caller callers cannot carol casket cease ceased
ceiling ceilings chapter chapters charter chatty cheat cheating chirping chop chopped clap clapped clock clocks clone closer clue clues
clutter cluttered compare comparing cooler collating crate crates crazy create created creates creating creepy crouch crouched
crouching crypt curly curve curved curving dang dent denied deny denote denying depend depending descend descending descent detect
detecting discover discovered display displayed displaying displays divide divided dividing dock docked donate donated donut dont duck
ducked export false farm farms feed feeding feeds filter filtering final finer flag flags flatten flattened fleet flip-flops folder
folders folks fonts forum forums freeze freezes freezing frown frowned gain gained garbage garden grace gratis great greater greatest
greeting guitar hinge hinged holler hollered hollering import inbound increase increased increasing inject interact interacting juggle
juggling king lack lacked lacking lacks license lightning limbo limit lining locate located locker loop looped luck lucky mass melt
melted mess messed messing messy mix mixed mixing mode model modeled modes module mosey moseyed moseying mush nest nested nickel nodes
opener outer overrides overwrite owens packet packets pager pants payer peaks peer peering pend perfectly pint pitch point pointed
pointer pointers pretty prod proud provide provided providing putty races racket racing rank ranked rate rated rates reader reading
regain relax relaxed relaxes remain remained remaining reply replied require required requiring retain retaining reuse reused rice ridden
risk risks risky rocket rook rookie rose roses route routes sadly salad scared scope scopes score scored scores scoring scraper script secret
secrets seek seeking separately shaft shaky shall shame share shared sheer shirt shoot shooting short shorten shortened shove shoving
show shown shows shutter shutters shucks slant slanted slash slate slated slice sliced slices slicing slither slurp smack snack snake
snakes snappy snip snippet solid span spans spanning spawn spell spelled spelling spill spills splint spoon sprinkle sprinkling squeak stage
staged stale stalled starving stash sticky stock stray stream streaming string strings suitable sung swap swapped swaps swift taught temple
tend tends tent tents tenth terse thorn thread threads tier tiers tighten tightening toast toasty trap trapped traps treat treated
treats trend tried tripod unbound unload unloading unrelated unset unusual unwind vine vines vote votes voting walker wallet warn warned
warning warns wasp wasps wither wrap wrapped wrapping wraps wrist wrists written yank yanks
absence accent accents align aligned battery batteries beep beeping bucket buckets clash click clicked clicking cookie cookies craft crafted credit
credits crucial delete deleted demand demands derive detail detailed details drag dragged dump dumped dumping expense expenses expire
expired exposure express figure figures figured fitness float floating freedom grain grant granted grin grinning greatly link linked
linking log logged logging loosely mask misuse obey period periods port post posted posting probe proceed prove proving related
relate reload retire retired revise rise`.split(/\s+/)
