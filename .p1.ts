import { drawRug } from "./prisma/demo/draw-rug";
const red=["#7d1f22","#1d2a4d","#c9a86a","#231815","#a5533a"];
for (let i=0;i<3;i++) await drawRug({seed:11,kind:"whole",weave:"knotted",colours:red});
