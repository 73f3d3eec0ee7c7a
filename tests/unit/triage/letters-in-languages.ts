/** Letters about water on a rug, written for these tests before the table of words was tried on them. */
export const IN_OTHER_LANGUAGES = {
  German: "Guten Tag, unser Seidenteppich ist seit heute Morgen klatschnass, weil ein Rohr geplatzt ist. Was sollen wir jetzt tun? Können Sie ihn abholen? Mit freundlichen Grüßen, Hanna Vogt",
  "German, in English words": "Hallo, in der Not: was war das? Ich will so bald es geht eine Antwort, am besten in den Stunden von acht bis zehn. Der Teppich ist hin.",
  French: "Bonjour, notre tapis en soie est trempé depuis ce matin, un tuyau a éclaté. Que pouvons-nous faire ? Merci de votre aide.",
  Dutch: "Goedemorgen, ons zijden tapijt is kletsnat: de wasmachine is vannacht overgelopen. Wat moeten we doen? Het was in de woonkamer en we hebben het met handdoeken gedept. Alvast bedankt.",
  Danish: "Hej, vores tæppe er helt gennemblødt efter at et rør er sprunget. Hvad skal vi gøre? Kan I hente det i dag? Venlig hilsen",
  Swedish: "Hej! Vår matta är genomblöt efter att ett rör har gått sönder i natt. Vad ska vi göra? Kan ni hämta den i dag?",
  Italian: "Buongiorno, il nostro tappeto di seta è fradicio da stamattina perché si è rotto un tubo. Che cosa dobbiamo fare? Grazie.",
  Spanish: "Hola, nuestra alfombra de seda está empapada desde esta mañana porque se rompió una tubería. ¿Qué podemos hacer? Gracias.",
  Portuguese: "Bom dia, o nosso tapete de seda está encharcado desde esta manhã, rebentou um cano. O que devemos fazer? Obrigada.",
  Polish: "Dzień dobry, nasz jedwabny dywan jest od rana całkiem mokry, bo pękła rura. Co mamy robić? Dziękuję za pomoc.",
  Turkish: "Merhaba, ipek halımız bu sabahtan beri sırılsıklam, çünkü bir boru patladı. Ne yapmalıyız? Teşekkürler.",
  Welsh: "Bore da, mae ein ryg sidan yn wlyb socian ers y bore yma am fod pibell wedi torri. Beth ddylen ni ei wneud? Diolch.",
  Irish: "Dia duit, tá ár ruga síoda fliuch báite ó mhaidin mar gur bhris píobán. Cad ba cheart dúinn a dhéanamh? Go raibh maith agat.",
  Ukrainian: "Добрий день, наш шовковий килим зранку зовсім мокрий, бо прорвало трубу. Що нам робити?",
  Arabic: "صباح الخير، سجادتنا الحريرية مبللة تماما منذ الصباح لأن أنبوبا انفجر. ماذا نفعل؟",
  Chinese: "您好，我们的丝绸地毯今天早上被水浸透了，因为水管爆裂。我们该怎么办？",
} as const;

/** English as people write it to a workshop: short, long, foreign names, telegram style. */
export const HONEST_LETTERS = [
  "I moved a plant pot and found a pale ring on the rug underneath. It has been dry for a week or so. Is there anything to be done, or do we live with it?",
  "What would cleaning cost for a 170 x 240 viscose rug?",
  "Rug from Isfahan, Iran, bought 1998, silk on silk, knots per square inch 800. Price for cleaning?",
  "Hello, do you collect from Nether Hallow? Kind regards, Delphine Orr",
  "Is this silk or viscose?",
  "May I bring it on Thursday?",
  "Photos attached as promised. Regards, Jürgen Müller-Lüdenscheidt, Straße des 17. Juni, Köln",
  "my rug has turn brown after a men clean it, i am not good in english sorry, what can i do",
  "Thank you, Thursday suits us.",
  "Nice rug, old, wool, small hole, moths?",
];
