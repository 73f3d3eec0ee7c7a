import { drawRug } from "./.bundle.mjs";
const red=["#7d1f22","#1d2a4d","#c9a86a","#231815","#a5533a"];
for (let i=0;i<4;i++) { const c=process.cpuUsage(); await drawRug({seed:11,kind:"whole",weave:"knotted",colours:red}); console.log("bundle cpu",Math.round(process.cpuUsage(c).user/1000)); }
