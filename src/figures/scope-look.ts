import { SOLIDS, type SolidName } from "../engine/knee/scope/scene.ts";

const numberOf = (name: SolidName): string => `k==${SOLIDS.indexOf(name)}`;

/** Grain of surfaces: smooth noise of one and of three sizes. */
export const NOISE = `
float hash(vec3 p){p=fract(p*.1031);p+=dot(p,p.zyx+31.32);return fract((p.x+p.y)*p.z);}
float grain(vec3 p){vec3 i=floor(p),g=fract(p);g=g*g*(3.-2.*g);
return mix(mix(mix(hash(i),hash(i+vec3(1,0,0)),g.x),mix(hash(i+vec3(0,1,0)),hash(i+vec3(1,1,0)),g.x),g.y),
mix(mix(hash(i+vec3(0,0,1)),hash(i+vec3(1,0,1)),g.x),mix(hash(i+vec3(0,1,1)),hash(i+vec3(1,1,1)),g.x),g.y),g.z);}
float cloud(vec3 p){return .55*grain(p)+.3*grain(p*2.1+7.)+.15*grain(p*4.3+3.);}
float vein(vec3 p,float w){return smoothstep(w,w*.15,abs(cloud(p+.9*cloud(p*.6+11.))-.47));}
`;

/** Relief that is only seen in the light: villi, lobules, fibres. */
export const RELIEF = `
float relief(vec3 p,int k,vec4 s){
if(${numberOf("wall")})return .55*cloud(p*.8)+.2*cloud(p*2.9)+.1*grain(p*6.);
if(${numberOf("fat")})return .95*cloud(p*.5)+.05*grain(p*2.2);
if(${numberOf("meniscus")})return .05*grain(vec3(s.y*(19.-s.z)*.8,s.z*2.2,p.z*2.))+.02*grain(p*4.);
if(${numberOf("strip")})return .06*grain(vec3(p.y*.4,p.x*2.,p.z*2.5))+.03*grain(p*4.);
if(${numberOf("anterior-cruciate")}||${numberOf("posterior-cruciate")})return .4*grain(vec3(p.x*1.7,p.y*.3-p.z*.35,p.z*.3+p.x*.8))+.05*grain(p*3.);
if(${numberOf("popliteus")})return .16*grain(vec3(p.x*2.6-p.z*.6,p.y*1.6-p.z*.8,p.z*.25));
return .04*grain(p*1.1)+.006*grain(p*4.);}
`;

/** Colour, gloss, wetness and glow of each tissue: a = colour, g = (roughness, film of liquid, light that comes through). */
export const TISSUE = `
void tissue(vec3 p,int k,vec4 s,out vec3 a,out vec3 g){
float n=cloud(p*.32),m=cloud(p*1.3);g=vec3(.3,.5,.4);
if(${numberOf("femur")}||${numberOf("tibia")}){
a=mix(vec3(.845,.815,.755),vec3(.93,.915,.875),smoothstep(.2,.75,n));
a=mix(a,vec3(.88,.74,.66),.2*smoothstep(.5,.85,m));
g=vec3(.19,1.,.3);
float bare=0.;
if(${numberOf("tibia")})bare=max(smoothstep(11.,5.5,abs(p.x))*smoothstep(3.,9.,p.y),max(smoothstep(3.6,1.6,abs(p.x-.2)),smoothstep(9.,5.,abs(p.x-1.))*smoothstep(-9.,-15.,p.y)));
else bare=smoothstep(11.5,8.,abs(p.x-.6))*smoothstep(7.,13.,p.z);
a=mix(a,mix(vec3(.74,.44,.36),vec3(.87,.68,.5),n),bare*smoothstep(.1,.5,m+.2));
a=mix(a,vec3(.6,.14,.12),.4*bare*vein(p*.7,.03));g.y=mix(1.,.55,bare);}
else if(${numberOf("wall")}){
a=mix(vec3(.76,.39,.33),vec3(.87,.6,.48),smoothstep(.28,.7,n));
a=mix(a,vec3(.9,.72,.5),.5*smoothstep(.55,.8,cloud(p*.22+5.)));
a=mix(a,vec3(.56,.08,.08),.6*vein(p*vec3(.5,.5,.38),.032)+.28*vein(p*1.2+9.,.026));
a=mix(a,vec3(.9,.77,.64),.55*smoothstep(6.,2.5,p.z));g=vec3(.36,.5,.35);}
else if(${numberOf("meniscus")}||${numberOf("strip")}){
float fibre=${numberOf("meniscus")}?grain(vec3(s.y*(19.-s.z)*.5,s.z*2.4,p.z*1.4)):grain(vec3(p.y*.3,p.x*2.4,p.z*2.4));
a=mix(vec3(.88,.815,.69),vec3(.945,.9,.8),fibre);
if(${numberOf("meniscus")}){
a=mix(a,vec3(.79,.68,.52),.62*smoothstep(.45,1.,s.x));
a=mix(a,vec3(.86,.56,.47),.6*smoothstep(.3,0.,s.x));
a=mix(a,vec3(.63,.15,.13),.5*smoothstep(.34,.05,s.x)*vein(p*1.1,.03));}
else a=mix(a,vec3(.85,.6,.46),.3*smoothstep(.45,.75,m));
a=mix(a,vec3(.82,.68,.54),.22*m);g=vec3(.28,.5,.6);}
else if(${numberOf("anterior-cruciate")}||${numberOf("posterior-cruciate")}){
float fibre=grain(vec3(p.x*2.2,p.y*.25-p.z*.3,p.z*.3+p.x));
a=mix(vec3(.83,.68,.54),vec3(.945,.87,.76),fibre);
a=mix(a,vec3(.83,.53,.44),.4*smoothstep(.4,.7,n));
a=mix(a,vec3(.68,.19,.16),.42*vein(vec3(p.x*.8,p.y*.3,p.z*.3),.024)*smoothstep(.3,.6,n));g=vec3(.28,.55,.45);}
else if(${numberOf("fat")}){
a=mix(vec3(.93,.74,.36),vec3(.9,.6,.4),smoothstep(.35,.68,n));
a=mix(a,vec3(.98,.85,.52),.5*smoothstep(.5,.8,m));
a=mix(a,vec3(.62,.12,.1),.5*vein(p*.5,.03));g=vec3(.36,.24,.55);}
else if(${numberOf("popliteus")}){
a=mix(vec3(1.,.93,.78),vec3(1.,.98,.9),grain(vec3(p.x*2.4-p.z*.5,p.y*1.7-p.z*.8,p.z*.2)));g=vec3(.28,.4,1.7);}
else if(${numberOf("stitch")}){
a=mix(vec3(.9,.87,.8),vec3(.2,.19,.2),step(.8,fract((p.x+p.y*1.3+p.z)*.9)));g=vec3(.42,.3,.1);}
else{a=vec3(.4,.41,.43);g=vec3(.17,2.6,0.);
if(${numberOf("needle")})a=mix(a,vec3(.04),step(fract(s.w),.1));}}
`;
