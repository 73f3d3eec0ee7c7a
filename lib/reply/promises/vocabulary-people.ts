import { nouns, verbs, words } from "./words";

/** Before "cleaner", that it is no person. */
const MACHINE = "(?:steam|vacuum|pressure|jet|window|oven|drain)";
/** Before “cleaning” and the like, that it is work done and no firm's name. */
const WORK_DONE = `(?:${MACHINE}|previous|earlier|former|first|second|last|later|latest|another|repeated|frequent|dry|wet|damp|hot|hand|machine|home|household|chemical|foam|powder|rug|carpet|upholstery|deep|spring)`;

/** Whom a letter might accuse, of what, and what others will decide. */
export const PEOPLE: Readonly<Record<string, string>> = {
  PARTY: `(?:(?<!\\b${MACHINE} )cleaners?|` + nouns("contractor, company, firm, outfit, shop, store, dealer, seller, retailer, supplier, manufacturer, maker, importer, auctioneer, auction house, restorer, repairer, fitter, installer, decorator, builder, plumber, neighbour, neighbor, landlord, tenant, lodger, mover, carrier, courier, haulier, removal men, removal firm, workmen, technician, gentleman, chap, fellow, bloke, lad, fella, guy, cleaning lady, au pair, previous people, last people, other lot, last lot, other workshop, previous workshop, people before us")
    + `|whoever|they|he|she|(?:mr|mrs|ms|miss|dr)\\.? \\w+|[a-z]+ & [a-z]+(?: [a-z]+){0,2}|(?!${WORK_DONE} )[a-z]+ (?:carpet care|rug care|rug services|carpet services|cleaning|cleaners|interiors|removals|movers|galleries|gallery|furnishings|floors|flooring|floorcare|carpets|rugs|textiles|restorations?|laundry|storage|logistics|antiques)(?= (?!machines?\\b)|$|,|'))`,
  MISDEED: verbs("ruin, destroy, wreck, spoil, botch, bungle, butcher, cook, scorch, burn, shrink, mishandle, mistreat, overdo, overwet, over-wet, damage, misdescribe, mislead, missell, mis-sell, misrepresent, mislabel, misinform, neglect, deceive, cheat, swindle, con, trick, defraud, rip off, fob off, cut corners, mess up, muck up, fail you, let you down, make a mess, make a hash, get it wrong, do it wrong, skimp, scrimp, bodge, soak it, flood it, drown, bleached"),
  LEGAL: words("insurers?, insurers?', insurer's, insurance, policy, underwriters?, assessor, loss adjuster, adjuster, claim, tribunal, court, judge, ombudsman, small claims, trading standards, the law, consumer law, statute, legally, lawfully, refund, compensation, compensate, reimburse\\w*, liable, liability, warranty claim, chargeback, your bank"),
  DECIDES: words("will, must, has to, have to, is obliged, are obliged, is bound, are bound, bound to, bound by, be bound, is required, are required, always, invariably, entitled, entitles, guarantees?, succeed, win, pay up, cough up, cover this, covers this, in full, every penny, obliges, owes?, duty, have no choice, cannot refuse, is covered, are covered, automatically, on your side, no option, demand, award, side with, rule in, agree with (?:us|you), is paying, are paying, pays"),
  BABY: words("baby, babies, infants?, toddlers?, child, children, grandchildren, kids?, little ones?, pets?, dog, puppy, cat, kitten, rabbit, animals?"),
};
