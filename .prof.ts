import { drawRug } from "./prisma/demo/draw-rug";
const red=["#7d1f22","#1d2a4d","#c9a86a","#231815","#a5533a"];
await drawRug({seed:1,kind:"whole",weave:"knotted",colours:red},200,150);
for (const [k,w] of [["whole","knotted"],["whole","loomed"],["trouble","knotted"],["trouble","flatweave"],["back","knotted"],["pile","knotted"],["label","knotted"]] as const) {
 const c=process.cpuUsage(), t=performance.now(); await drawRug({seed:11,kind:k,weave:w,colours:red,labelText:"a\nb",damage:{kind:"coffee",x:.4,y:.5,r:.2}}); const d=process.cpuUsage(c); console.log(k,w,"cpu",Math.round(d.user/1000),"wall",Math.round(performance.now()-t));
}
