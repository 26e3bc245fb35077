package stretchwright.web.frame;

import io.javalin.config.RoutesConfig;

/** One of the program's screens, under addresses of its own. */
public interface Screen {
    void open(RoutesConfig routes);
}
