package rigside.rig;

import com.fazecast.jSerialComm.SerialPort;
import com.fazecast.jSerialComm.SerialPortInvalidPortException;
import java.io.IOException;

/** A serial port, real or a pseudo terminal. */
final class SerialWire implements Wire {
    private static final int WAIT_MILLIS = 200;

    private final SerialPort port;

    private SerialWire(SerialPort port) {
        this.port = port;
    }

    static Wire open(Origin.Serial settings) throws IOException {
        try {
            SerialPort port = SerialPort.getCommPort(settings.port());
            port.setComPortParameters(
                    settings.baud(),
                    settings.bits(),
                    settings.stopBits() == 2 ? SerialPort.TWO_STOP_BITS : SerialPort.ONE_STOP_BIT,
                    parity(settings.parity()));
            port.setFlowControl(SerialPort.FLOW_CONTROL_DISABLED);
            if (!port.openPort(0)) {
                throw new IOException(
                        "it cannot be opened; another program may have it, or you may not use it"
                                + " (error "
                                + port.getLastErrorCode()
                                + ")");
            }
            port.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING, WAIT_MILLIS, 0);
            return new SerialWire(port);
        } catch (SerialPortInvalidPortException none) {
            throw new IOException("there is no such port", none);
        } catch (LinkageError noLibrary) {
            throw new IOException(
                    "serial ports cannot be used on this system; let a program write to a file or"
                            + " a pipe instead",
                    noLibrary);
        }
    }

    private static int parity(Origin.Parity parity) {
        return switch (parity) {
            case NONE -> SerialPort.NO_PARITY;
            case ODD -> SerialPort.ODD_PARITY;
            case EVEN -> SerialPort.EVEN_PARITY;
        };
    }

    /** An unplugged port gives -1. */
    @Override
    public int read(byte[] into) {
        return port.readBytes(into, into.length);
    }

    /** Whatever was sent before the port was opened is lost, up to anywhere in a line. */
    @Override
    public boolean isMidLine() {
        return true;
    }

    @Override
    public void close() {
        port.closePort();
    }
}
