import java.nio.file.Path;
import org.flexwright.seed.*;
