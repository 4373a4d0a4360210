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
}
