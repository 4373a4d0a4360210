package org.flexwright.shells.revolution;
import org.flexwright.law.*; import org.flexwright.law.classical.*; import org.flexwright.quantity.*; import java.util.*;
import org.junit.jupiter.api.Test;
final class ScratchTest {
  static ShellMesh cylinder(double R,double L,double t,int n){ double[] r=new double[n+1],z=new double[n+1],a=new double[n],th=new double[n]; for(int i=0;i<=n;i++){r[i]=R;z[i]=L*i/n;} Arrays.fill(a,Math.PI/2); Arrays.fill(th,t); return new ShellMesh(r,z,a,a,th);}
  static ShellMesh plate(double a,double t,int n){ double[] r=new double[n+1],z=new double[n+1],b=new double[n],th=new double[n]; for(int i=0;i<=n;i++){r[i]=a*i/n;} Arrays.fill(th,t); return new ShellMesh(r,z,b,b,th);}
  static ShellMesh sphere(double R,double t,int n){ double[] r=new double[n+1],z=new double[n+1],s=new double[n],e=new double[n],th=new double[n]; for(int i=0;i<=n;i++){double q=Math.PI*i/n; r[i]=i==0||i==n?0:R*Math.sin(q); z[i]=-R*Math.cos(q); if(i<n){s[i]=q;e[i]=Math.PI*(i+1)/n;}} Arrays.fill(th,t); return new ShellMesh(r,z,s,e,th);}
  @Test void derivatives(){
    StrainEnergy law=Ogden.of(Pressure.mpa(0.63e-6),1.3).and(Pressure.mpa(0.0012e-6),5).and(Pressure.mpa(-0.01e-6),-2);
    for(ShellMesh m: List.of(sphere(10,1.5,8),cylinder(5,10,1,6),plate(10,1,5))){
      ShellModel model=new ShellModel(m,law,5); Random rnd=new Random(1); double[] x=m.rest(); for(int i=0;i<x.length;i++) x[i]+=0.15*rnd.nextGaussian(); 
      for(int i=0;i<x.length;i+=3) x[i]=Math.abs(x[i]);
      double p=0.3; System.out.println(model.at(x,p)+" "+model.energy+" vol "+model.volume); 
      double[] f0=new double[x.length]; for(int i=0;i<x.length;i++) f0[i]=model.force[i]-p*model.swept[i];
      double worst=0,worstK=0,sc=0; for(double v:f0) sc=Math.max(sc,Math.abs(v));
      int nn=x.length; double[][] K=new double[nn][]; for(int j=0;j<nn;j++){double[] ej=new double[nn]; ej[j]=1; double[] o=new double[nn]; model.tangent.times(ej,o); K[j]=o;}
      double ks=0; for(double[] r:K) for(double v:r) ks=Math.max(ks,Math.abs(v));
      for(int j=0;j<nn;j++){ double h=1e-5; double s=x[j]; x[j]=s+h; model.at(x,p); double ep=model.energy-p*model.volume; double[] fp=new double[nn]; for(int i=0;i<nn;i++) fp[i]=model.force[i]-p*model.swept[i]; x[j]=s-h; model.at(x,p); double em=model.energy-p*model.volume; double[] fm=new double[nn]; for(int i=0;i<nn;i++) fm[i]=model.force[i]-p*model.swept[i]; x[j]=s; worst=Math.max(worst,Math.abs((ep-em)/(2*h)-f0[j])/sc); for(int i=0;i<nn;i++) worstK=Math.max(worstK,Math.abs((fp[i]-fm[i])/(2*h)-K[j][i])/ks); }
      System.out.println("grad err "+worst+" tangent err "+worstK);
    } }
  static int[] ids(int... v){return v;}
  @Test void cylinderInflates(){ // plane strain tube A/B 0.9: inner 9 outer 10
    StrainEnergy law=NeoHookean.of(Pressure.pa(1.0)); double A=9,B=10; 
    for(double r: new double[]{0.5,0.8,0.9}){ A=r*B; double la=1.5; double lb=Math.sqrt(1+(la*la-1)*r*r); double exact=Math.log(la/lb)+(1/(lb*lb)-1/(la*la))/2;
    int n=4; ShellMesh m=cylinder((A+B)/2,10,B-A,n); ShellModel model=new ShellModel(m,law,5); 
    List<Integer> h=new ArrayList<>(); for(int i=0;i<=n;i++){h.add(3*i+1);h.add(3*i+2);} 
    ShellSolver s=new ShellSolver(model,Loading.pressure(3*(n+1)),h.stream().mapToInt(i->i).toArray()); s.evaluate();
    double a=la*A; double mid=Math.sqrt(a*a+((A+B)/2)*((A+B)/2)-A*A); double R=(A+B)/2; boolean ok=true; for(int i=1;i<=5;i++) ok&=s.solve(new Control.Unknown(0),R+(mid-R)*i/5); System.out.println(r+" "+ok+" p "+s.factor+" exact "+exact+" rel "+(s.factor/exact-1)+" it "+s.iterations+" neg "+model.tangent.negative()); } }
  @Test void sphereInflates(){ StrainEnergy law=NeoHookean.of(Pressure.pa(1.0)); double B=10; for(double r:new double[]{0.5,0.9}) for(int n:new int[]{16,32,64}){ double A=r*B,la=1.5,lb=Math.cbrt(1+(la*la*la-1)*r*r*r); double exact=2/lb+1/(2*Math.pow(lb,4))-2/la-1/(2*Math.pow(la,4)); double R=(A+B)/2; ShellMesh m=sphere(R,B-A,n); ShellModel model=new ShellModel(m,law,5); int q=3*(n+1); ShellSolver s=new ShellSolver(model,Loading.pressure(q),ids(0,2,q-3,q-1,3*(n/2)+1)); s.evaluate(); double a=la*A; double mid=Math.cbrt(a*a*a+R*R*R-A*A*A); boolean ok=true; for(int i=1;i<=5;i++) ok&=s.solve(new Control.Unknown(3*(n/2)),R+(mid-R)*i/5); System.out.println(r+" n "+n+" "+ok+" p "+s.factor+" exact "+exact+" rel "+(s.factor/exact-1)+" it "+s.iterations+" neg "+model.tangent.negative()); } }
  @Test void plateBends(){ StrainEnergy law=NeoHookean.of(Pressure.pa(1.0/3)); double t=1; for(double aot: new double[]{10,20,50}) for(int n:new int[]{20,40,80,160}){ double a=aot*t; ShellMesh m=plate(a,t,n); ShellModel model=new ShellModel(m,law,5); int q=3*(n+1); ShellSolver s=new ShellSolver(model,Loading.pressure(q),ids(0,2,q-3,q-2,q-1)); s.evaluate(); double D=t*t*t/(12*0.75); double p=1e-4*64*D/(a*a*a*a)*t; boolean ok=s.solve(new Control.Load(),p); double w=s.x[1]; System.out.println("plate "+aot+" n "+n+" "+ok+" w/w0 "+w/(p*Math.pow(a,4)/(64*D))+" it "+s.iterations); } }
  @Test void sphereLimit(){ StrainEnergy law=NeoHookean.of(Pressure.pa(1.0)); double B=10; double r=0.9; for(int n:new int[]{24,48}){ double A=r*B; double R=(A+B)/2; ShellMesh m=sphere(R,B-A,n); ShellModel model=new ShellModel(m,law,5); int q=3*(n+1); ShellSolver s=new ShellSolver(model,Loading.pressure(q),ids(0,2,q-3,q-1,3*(n/2)+1)); s.evaluate(); PathFollower f=new PathFollower(s,()->System.out.print(" ")); boolean ok=f.limit(0.05,60); System.out.println("limit "+ok+" p "+s.factor+" exact 0.130427 "+(s.factor/0.130427-1)+" it "+s.iterations+" r/R "+s.x[3*(n/2)]/R);} }
  @Test void discSpring(){ // De 40 Di 20 t1 h0 1.5 nu .5 
    StrainEnergy law=NeoHookean.of(Pressure.pa(1.0/3)); for(int n:new int[]{20,40,80}){ double t=1,h0=1.5; double[] rr=new double[n+1],zz=new double[n+1],an=new double[n],th=new double[n]; for(int i=0;i<=n;i++){rr[i]=10+10.0*i/n; zz[i]=h0*(1-(double)i/n);} Arrays.fill(an,Math.atan2(-h0,10)); Arrays.fill(th,t); ShellMesh m=new ShellMesh(rr,zz,an,an,th); ShellModel model=new ShellModel(m,law,5); int q=3*(n+1); ShellSolver s=new ShellSolver(model,Loading.force(q,1),ids(q-2)); s.evaluate(); PathFollower f=new PathFollower(s,()->{ }); List<String> out=new ArrayList<>(); PathFollower g=new PathFollower(s,()->out.add(String.format(Locale.ROOT,"%.4f:%.6f",(h0-s.x[1])/h0,-s.factor))); var end=g.follow(new Control.Unknown(1),h0-2*h0,20,"d",org.flexwright.run.RunControl.none()); System.out.println(n+" "+end.kind()+" it "+s.iterations+" "+out); } }
  @Test void bellows(){ // sine? U-bellows Dm/w 8 rm/w .25 t/w .06: K w^3/(E Dm t^3)=1.2755 (nu .49) one convolution
    double w=1,Dm=8,rm=0.25,t=0.06; StrainEnergy law=NeoHookean.of(Pressure.pa(1.0/3)); for(int n:new int[]{10,20,40}){ 
      // quarter: from crest inner root (symmetry) to outer: half convolution: inner arc radius rm (quarter circle) , straight, outer quarter
      List<double[]> pts=new ArrayList<>(); List<double[]> ang=new ArrayList<>(); double Ri=Dm/2-w/2; // start at inner root: tangent along +z, r=Ri,z=0; quarter arc turning to +r
      for(int i=0;i<=n;i++){double a=Math.PI/2*(1-(double)i/n); pts.add(new double[]{Ri+rm-rm*Math.sin(a), rm*Math.cos(a), a}); }
      double len=w-2*rm; for(int i=1;i<=n;i++){pts.add(new double[]{Ri+rm+len*i/n, rm, 0});}
      for(int i=1;i<=n;i++){double a=Math.PI/2*i/n; pts.add(new double[]{Ri+rm+len+rm*Math.sin(a), 2*rm-rm*Math.cos(a), a});}
      int N=pts.size(); double[] r=new double[N],z=new double[N],st=new double[N-1],en=new double[N-1],th=new double[N-1]; for(int i=0;i<N;i++){r[i]=pts.get(i)[0];z[i]=pts.get(i)[1]; if(i<N-1){st[i]=pts.get(i)[2];en[i]=pts.get(i+1)[2];}} Arrays.fill(th,t); ShellMesh m=new ShellMesh(r,z,st,en,th); ShellModel model=new ShellModel(m,law,5); int q=3*N; ShellSolver s=new ShellSolver(model,Loading.force(q,q-2),ids(1,2,q-1)); s.evaluate(); boolean ok=s.solve(new Control.Unknown(q-2),z[N-1]*(1-1e-5)); double K=s.factor/(s.x[q-2]-z[N-1])/2; System.out.println("bellows "+n+" "+ok+" "+K*w*w*w/(Dm*t*t*t));
      long t0=System.nanoTime(); for(int rep=0;rep<200;rep++){ model.at(s.x,0); model.tangent.factor(); } System.out.println("per element ns "+(System.nanoTime()-t0)/200.0/(N-1)); } }
  @Test void modes(){ StrainEnergy law=NeoHookean.of(Pressure.pa(1.0)); double B=10; double r=0.9; int n=16; double A=r*B; double R=(A+B)/2; ShellMesh m=sphere(R,B-A,n); ShellModel model=new ShellModel(m,law,5); int q=3*(n+1); int[] held=ids(0,2,q-3,q-1,3*(n/2)+1); ShellSolver s=new ShellSolver(model,Loading.pressure(q),held); s.evaluate();
   for(double l: new double[]{1.1,1.2,1.25,1.3,1.35,1.4,1.45}){ boolean ok=s.solve(new Control.Unknown(3*(n/2)),R*l); 
    double[][] K=new double[q][]; for(int j=0;j<q;j++){double[] ej=new double[q]; ej[j]=1; double[] o=new double[q]; model.tangent.times(ej,o); K[j]=o;}
    var eig=new org.apache.commons.math3.linear.EigenDecomposition(new org.apache.commons.math3.linear.Array2DRowRealMatrix(K)); double[] ev=eig.getRealEigenvalues(); java.util.Arrays.sort(ev); int neg=0; for(double v:ev) if(v<0) neg++; System.out.println(l+" "+ok+" p "+s.factor+" neg "+model.tangent.negative()+" eig neg "+neg+" lowest "+ev[0]+" "+ev[1]+" "+ev[2]+" "+ev[3]);
    if(l==1.35){ double[] v=null; int best=0; double[] all=eig.getRealEigenvalues(); for(int i=0;i<q;i++) if(all[i]<all[best]) best=i; v=eig.getEigenvector(best).toArray(); for(int i=0;i<=n;i++) System.out.printf("   %.3f %.3f %.3f | x %.3f %.3f%n",v[3*i],v[3*i+1],v[3*i+2],s.x[3*i],s.x[3*i+1]); } } }
}
