import { WALK } from "../engine/knee/scope/cast.ts";
import { SCENE, SOLIDS, SURFACE } from "../engine/knee/scope/scene.ts";
import { NOISE, TISSUE } from "./scope-look.ts";
import { distanceFunction, extrasFunction } from "./scope-print.ts";

const HEAD = `#version 300 es
precision highp float;
precision highp int;
out vec4 drawn;
uniform int zero;
`;

const SCENE_TEXT = distanceFunction(SCENE, "scene", "F");
const SURFACE_TEXT = extrasFunction(SURFACE, "surface", "G");

const number = (value: number): string => (Number.isInteger(value) ? `${value}.` : String(value));

/** Tissue that is thin enough for light to pass through its edge. */
const MENISCUS = SOLIDS.indexOf("meniscus");
const STRIP = SOLIDS.indexOf("strip");

/**
 * One loop asks for the distance everywhere: the walk, the four taps of the slope, the four of the shade in corners and
 * the one of the thickness. The scene then stands once in the program, which keeps its preparation short.
 */
const WALKED = `
struct Seen{float far;vec3 at;vec3 slope;float open;float thick;int k;};
Seen walk(vec3 o,vec3 r){
Seen e;e.far=${number(WALK.startMm)};e.at=o;e.slope=vec3(0);e.open=1.;e.thick=0.;e.k=-1;
vec3 q=o+r*e.far;float w=0.;int stage=0;
for(int i=zero;i<${WALK.steps + 10};i++){
float d=scene(q);
if(stage==0){
if(d<${WALK.nearMm}+${WALK.nearPerMm}*e.far||i>=${WALK.steps}){e.at=q;e.k=solid;w=.03+.0012*e.far;stage=1;}
else{e.far+=d*${WALK.share};if(e.far>${number(WALK.farMm)})return e;q=o+r*e.far;continue;}}
else if(stage<5){e.slope+=d*(stage==1?vec3(1,-1,-1):stage==2?vec3(-1,-1,1):stage==3?vec3(-1,1,-1):vec3(1));stage++;if(stage==5)e.slope=normalize(e.slope);}
else if(stage<9){float j=float(stage-4),h=.15+.26*j*j;e.open-=max(h-d,0.)*.25*pow(.62,j-1.);stage++;if(stage==9&&e.k!=${MENISCUS}&&e.k!=${STRIP})return e;}
else{e.thick=-d;return e;}
if(stage<5)q=e.at+w*(stage==1?vec3(1,-1,-1):stage==2?vec3(-1,-1,1):stage==3?vec3(-1,1,-1):vec3(1));
else if(stage<9){float j=float(stage-4);q=e.at+e.slope*(.15+.26*j*j);}
else q=e.at-e.slope*1.1;}
return e;}
`;

/** Light from beside the lens, a film of liquid on every surface, light that passes through thin tissue, and the tone of a camera. */
const LIT = `
uniform vec3 tip;uniform mat3 view;uniform float halfField,light,ticks;
vec3 look(vec2 uv){
float rr=length(uv),th=rr*halfField;
vec3 r=view*vec3(uv/max(rr,.00001)*sin(th),cos(th));
Seen e=walk(tip,r);
if(e.k<0)return vec3(.02,.005,.004);
vec3 p=e.at,n=e.slope;vec4 s=surface(p);s.w*=ticks;
vec3 a,m,g;tissue(p,e.k,s,a,m,g);
n=normalize(n-(g-n*dot(g,n))*.55*smoothstep(75.,14.,e.far));
if(dot(n,r)>0.)n=normalize(n-r*dot(n,r)*1.02);
vec3 l=tip+view*vec3(0,1.1,-.3)-p;float far=length(l);l/=far;vec3 v=-r,hv=normalize(l+v);
float open=clamp(e.open,.05,1.),nl=dot(n,l),nv=max(dot(n,v),.02),nh=max(dot(n,hv),0.);
float round=pow(max((nl+.25*m.z)/(1.+.25*m.z),0.),.72);
vec3 warm=vec3(1.,.56,.36);
vec3 c=a*round*mix(open,1.,.15*m.z)+warm*a*m.z*.2*smoothstep(-.35,.5,nl)*(1.-round)*open;
if(e.k==${MENISCUS}||e.k==${STRIP})c+=a*warm*.15*smoothstep(1.,.1,e.thick);
float q=m.x*m.x;q*=q;float sharp=q/(3.1416*pow(nh*nh*(q-1.)+1.,2.)),rim=.035+.6*pow(1.-nv,5.);
c+=vec3(.93,.97,1.)*min(sharp*rim*m.y*.5,5.)*max(nl,0.)*open;
vec3 wet=normalize(n+.13*rise(p*.85).xyz*smoothstep(60.,10.,e.far));
float film=max(dot(wet,hv),0.);
if(film>.98)c+=pow(film,280.)*2.7*smoothstep(.34,.6,cloud(p*2.1+31.))*m.y*open;
c+=pow(film,26.)*.15*m.y*open;
c+=a*a*vec3(.19,.145,.115)*(.25+.75*open)*(.7+.3*n.z);
c+=a*vec3(1.,.82,.74)*pow(1.-nv,2.5)*.17*(.3+.7*open);
c*=light/(far*far+110.);
return mix(vec3(.05,.03,.025)*light/900.,c,exp(-e.far*.006));}
`;

const PICTURE = `
uniform vec2 size,corner;uniform float mirror;
void main(){copyF();copyG();
vec2 uv=2.*(gl_FragCoord.xy+corner)/size-1.;uv.x*=mirror;
float r=length(uv),px=2./size.y;
if(r>1.){drawn=vec4(0);return;}
vec3 c=look(uv);
c*=1.-.5*pow(r,3.6);
float y=dot(c,vec3(.3,.59,.11)),t=y*(1.+y*.16)/(1.+y*.72);
c*=t/max(y,.0001);c=mix(c,vec3(t),smoothstep(.75,1.15,t)*.7);
c=pow(clamp(c*vec3(1.02,1.,.985),0.,1.),vec3(1./2.2));
c=mix(vec3(dot(c,vec3(.3,.59,.11))),c,1.18);c=mix(c,c*c*(3.-2.*c),.35);
c+=(hash(vec3(gl_FragCoord.xy+corner,1.))-.5)*.012;
float rim=smoothstep(1.,1.-2.5*px,r);
drawn=vec4(c*smoothstep(1.,.965,r)*rim,rim);}
`;

/** The fragment shader of the picture. */
export const PICTURE_SHADER: string = HEAD + SCENE_TEXT + SURFACE_TEXT + NOISE + TISSUE + WALKED + LIT + PICTURE;

/** A shader that writes the distance and the solid at given points, one a pixel; for the test that it agrees with the engine. */
export const PROBE_SHADER: string = `${HEAD}${SCENE_TEXT}
uniform vec4 points[64];
void main(){copyF();vec3 p=points[int(gl_FragCoord.x)].xyz;float d=scene(p);
uint bits=floatBitsToUint(d);
drawn=vec4(float(bits>>24u&255u),float(bits>>16u&255u),float(bits>>8u&255u),float(solid))/255.;}
`;

export const VERTEX_SHADER = `#version 300 es
void main(){gl_Position=vec4(vec2(gl_VertexID&1,gl_VertexID>>1)*4.-1.,0,1);}`;
