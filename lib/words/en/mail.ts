/** Letters that go out by themselves, and what stands in every letter besides its words. */
export const MAIL = {
  "mail.own-page": "Your own page: {link}",
  "mail.enclosed": "With this letter:",
  "enclosed.condition-report": "a condition report, for an insurer or whoever needs it on paper",
  "enclosed.letter-to-seller": "a letter to the seller, for you to sign and send if you wish",
  "enclosed.care-card": "a care card",
  "enclosed.cut-down-plan": "a plan for cutting the rug down",
  "mail.subject": "Your rug",
  "ack.subject": "We have your enquiry {reference}",
  "ack.dear": "Dear {name},",
  "ack.good-day": "Good day,",
  "ack.first-aid": "While it is wet, please do this first, whatever the rug is made of:",
  "ack.first-aid-unread": "Nobody here has read your letter yet. If the rug is wet, please do this first, whatever it is made of:",
  "ack.reached": "Your enquiry has reached us. Its number is {reference}. A person here reads what you wrote, looks at your photos and answers you; nothing is decided by a machine.",
  "ack.until": "Until you hear from us, please put no water and no product on the rug.",
  "ack.page": "On your own page you can see what you sent, add photos and read our answer. The link is for you alone: whoever has it can see the page.",
  "ack.itself": "This letter was sent by itself. If you did not write to us, you need do nothing.",
} as const;
