class Hello {
  public static void main(String[] arguments) {
    System.out.println("Hello");
  }
}
