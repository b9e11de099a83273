import { SOLIDS, type SolidName } from "../engine/knee/scope/scene.ts";

const is = (...names: readonly SolidName[]): string => names.map((name) => `k==${SOLIDS.indexOf(name)}`).join("||");

/**
 * Grain of surfaces: smooth noise between the corners of unit cubes. `rise` gives its slope and its value from the same
 * eight corners, so that relief needs no further looks; `cloud` lays three sizes over each other, `vein` is a thin level line of it.
 */
export const NOISE = `
float hash(vec3 p){p=fract(p*.1031);p+=dot(p,p.zyx+31.32);return fract((p.x+p.y)*p.z);}
vec4 rise(vec3 p){vec3 i=floor(p),g=fract(p),u=g*g*(3.-2.*g);
float a=hash(i),b=hash(i+vec3(1,0,0)),c=hash(i+vec3(0,1,0)),d=hash(i+vec3(1,1,0)),e=hash(i+vec3(0,0,1)),f=hash(i+vec3(1,0,1)),h=hash(i+vec3(0,1,1)),l=hash(i+vec3(1));
vec3 one=vec3(b,c,e)-a,two=vec3(a-b-c+d,a-c-e+h,a-b-e+f);float all=b+c+e+l-a-d-f-h;
return vec4(6.*g*(1.-g)*(one+u.yzx*two.xyz+u.zxy*two.zxy+all*u.yzx*u.zxy),a+dot(one,u)+dot(two,u*u.yzx)+all*u.x*u.y*u.z);}
float cloud(vec3 p){float c=0.,w=.55;for(int j=zero;j<3;j++){c+=w*rise(p).w;p=p*2.1+7.;w*=.52;}return c;}
float vein(vec3 p,float w){return smoothstep(w,w*.15,abs(cloud(p+.9*cloud(p*.6+11.))-.47));}
`;

const CORDS = is("anterior-cruciate", "posterior-cruciate");

/**
 * The look of each tissue: a = its colour; g = roughness, film of liquid, light that comes through; t = slope of a relief that
 * is only seen in the light. Fibres run by `way`, at places `q`, and show in colour and relief alike; what is rough besides
 * has `sizes` layers, the first of `step` cubes a millimetre and `height` mm. Vessels lie on top, in one or two nets.
 */
export const TISSUE = `
void tissue(vec3 p,int k,vec4 s,out vec3 a,out vec3 g,out vec3 t){
float n=cloud(p*.32),m=cloud(p*1.3),size=1.1,high=.04,fibre=0.,bleeds=0.,wide=.03;int sizes=2,nets=1;
vec3 q=p,at=p,red=vec3(.63,.15,.13);mat3 way=mat3(0);g=vec3(.3,.5,.4);t=vec3(0);
if(${is("meniscus")}){q=vec3(s.y*(19.-s.z)*.65,s.z*2.3,p.z*1.7);way[2]=vec3(0,0,1.7);fibre=.05;size=4.;high=.02;sizes=1;}
else if(${is("strip")}){way=mat3(0,2.2,0,.35,0,0,0,0,2.4);q=way*p;fibre=.06;size=4.;high=.03;sizes=1;}
else if(${CORDS}){way=mat3(1.9,0,.9,0,.28,0,0,-.33,.3);q=way*p;fibre=.4;size=3.;high=.05;sizes=1;}
else if(${is("popliteus")}){way=mat3(2.5,0,0,0,1.65,0,-.55,-.8,.22);q=way*p;fibre=.16;sizes=0;}
else if(${is("wall")}){size=.8;high=.3;sizes=4;}
else if(${is("fat")}){size=.5;high=.5;sizes=3;}
if(fibre>0.){vec4 f=rise(q);t=fibre*(f.xyz*way);fibre=f.w;}
for(int j=zero;j<sizes;j++){t+=high*size*rise(p*size+float(j)*7.).xyz;size*=2.1;high*=${is("wall")}?.72:.52;}
if(${is("femur", "tibia")}){
a=mix(vec3(.845,.815,.755),vec3(.93,.915,.875),smoothstep(.2,.75,n));
a=mix(a,vec3(.88,.74,.66),.2*smoothstep(.5,.85,m));
float bare=0.;
if(${is("tibia")})bare=max(smoothstep(11.,5.5,abs(p.x))*smoothstep(3.,9.,p.y),max(smoothstep(3.6,1.6,abs(p.x-.2)),smoothstep(9.,5.,abs(p.x-1.))*smoothstep(-9.,-15.,p.y)));
else bare=smoothstep(11.5,8.,abs(p.x-.6))*smoothstep(7.,13.,p.z);
a=mix(a,mix(vec3(.74,.44,.36),vec3(.87,.68,.5),n),bare*smoothstep(.1,.5,m+.2));
red=vec3(.6,.14,.12);bleeds=.4*bare;at=p*.7;g=vec3(.19,mix(1.,.55,bare),.3);}
else if(${is("wall")}){
a=mix(vec3(.76,.39,.33),vec3(.87,.6,.48),smoothstep(.28,.7,n));
a=mix(a,vec3(.9,.72,.5),.5*smoothstep(.55,.8,m));
a=mix(a,vec3(.9,.77,.64),.55*smoothstep(6.,2.5,p.z));
red=vec3(.56,.08,.08);bleeds=.6;at=p*vec3(.5,.5,.38);wide=.032;nets=2;g=vec3(.36,.5,.35);}
else if(${is("meniscus", "strip")}){
a=mix(vec3(.88,.815,.69),vec3(.945,.9,.8),fibre);
if(${is("meniscus")}){
a=mix(a,vec3(.79,.68,.52),.62*smoothstep(.45,1.,s.x));
a=mix(a,vec3(.86,.56,.47),.6*smoothstep(.3,0.,s.x));
bleeds=.5*smoothstep(.34,.05,s.x);at=p*1.1;}
else a=mix(a,vec3(.85,.6,.46),.3*smoothstep(.45,.75,m));
a=mix(a,vec3(.82,.68,.54),.22*m);g=vec3(.28,.5,.6);}
else if(${CORDS}){
a=mix(vec3(.83,.68,.54),vec3(.945,.87,.76),fibre);
a=mix(a,vec3(.83,.53,.44),.4*smoothstep(.4,.7,n));
red=vec3(.68,.19,.16);bleeds=.42*smoothstep(.3,.6,n);at=vec3(p.x*.8,p.y*.3,p.z*.3);wide=.024;g=vec3(.28,.55,.45);}
else if(${is("fat")}){
a=mix(vec3(.93,.74,.36),vec3(.9,.6,.4),smoothstep(.35,.68,n));
a=mix(a,vec3(.98,.85,.52),.5*smoothstep(.5,.8,m));
red=vec3(.62,.12,.1);bleeds=.5;at=p*.5;g=vec3(.36,.24,.55);}
else if(${is("popliteus")}){a=mix(vec3(1.,.93,.78),vec3(1.,.98,.9),fibre);g=vec3(.28,.4,1.7);}
else if(${is("stitch")}){a=mix(vec3(.9,.87,.8),vec3(.2,.19,.2),step(.8,fract((p.x+p.y*1.3+p.z)*.9)));g=vec3(.42,.3,.1);}
else{a=vec3(.4,.41,.43);g=vec3(.17,2.6,0.);
if(${is("needle")})a=mix(a,vec3(.04),step(fract(s.w),.1));}
for(int j=zero;j<nets&&bleeds>.01;j++){a=mix(a,red,bleeds*vein(at,wide));at=p*1.2+9.;bleeds*=.47;}}
`;
