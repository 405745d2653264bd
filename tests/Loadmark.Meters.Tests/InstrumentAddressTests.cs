using Loadmark.Meters.Instruments;

namespace Loadmark.Meters.Tests;

public sealed class InstrumentAddressTests
{
    [Theory]
    [InlineData("192.0.2.7", "192.0.2.7", 5025, false)]
    [InlineData(" bench-meter ", "bench-meter", 5025, false)]
    [InlineData("bench-meter:5024", "bench-meter", 5024, false)]
    [InlineData("2001:db8::7", "2001:db8::7", 5025, false)]
    [InlineData("[2001:db8::7]", "2001:db8::7", 5025, false)]
    [InlineData("[2001:db8::7]:65535", "2001:db8::7", 65535, false)]
    [InlineData("/dev/ttyUSB0", "/dev/ttyUSB0", 9600, true)]
    [InlineData("/dev/ttyUSB0:115200", "/dev/ttyUSB0", 115200, true)]
    [InlineData("/dev/serial/by-path/pci-0000:00:14.0-usb-0:3:1.0-port0", "/dev/serial/by-path/pci-0000:00:14.0-usb-0:3:1.0-port0", 9600, true)]
    [InlineData("COM3", "COM3", 9600, true)]
    [InlineData("com12:19200", "com12", 19200, true)]
    [InlineData("com3.example:80", "com3.example", 80, false)]
    public void Reads_where_an_instrument_is(string text, string name, int number, bool isSerial)
    {
        var address = InstrumentAddress.Read(text, out var complaint);
        Assert.Equal((new InstrumentAddress(name, number, isSerial), ""), (address, complaint));
        Assert.Equal(address, InstrumentAddress.Read(address!.ToString(), out _));
    }

    [Theory]
    [InlineData("", "Expected a host")]
    [InlineData("http://bench", "Expected a host")]
    [InlineData("a b", "Expected a host")]
    [InlineData(":5025", "Expected a host")]
    [InlineData("[::1", "Expected a host")]
    [InlineData("bench:0", "Expected a port from 1 to 65535 behind the host; found '0'.")]
    [InlineData("bench:65536", "Expected a port")]
    [InlineData("bench:+5", "Expected a port")]
    [InlineData("bench:", "Expected a port")]
    [InlineData("/dev/ttyUSB0:0", "Expected the speed of the serial port")]
    [InlineData("COM3:99999999999", "Expected the speed of the serial port")]
    [InlineData("COM3:", "Expected the speed of the serial port")]
    public void What_is_no_address_is_told(string text, string complaint)
    {
        Assert.Null(InstrumentAddress.Read(text, out var told));
        Assert.StartsWith(complaint, told, StringComparison.Ordinal);
    }
}
